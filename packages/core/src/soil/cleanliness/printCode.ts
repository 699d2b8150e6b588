import { type CleanlinessCode, codeSizes } from "./CleanlinessCode.js";

/**
 * A cleanliness code as people write it.
 *
 * @see ISO 4406:2021, section 4
 * @example
 * printCode(parseCode("14 / 12 / ≥7")) // "14/12/>=7"
 */
export function printCode(code: CleanlinessCode): string {
  return codeSizes.map((size) => `${code[size].fewCounted ? ">=" : ""}${code[size].scale}`).join("/");
}
