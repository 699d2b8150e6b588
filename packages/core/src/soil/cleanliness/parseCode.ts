import { InputError } from "../../InputError.js";
import type { CleanlinessCode, CodePart } from "./CleanlinessCode.js";
import { requireFallingScale } from "./requireFalling.js";

/**
 * Reads a cleanliness code: "18/16/13", ">28/20/14" or "14/12/>=7", with * or - for a size not counted. Blanks do not
 * matter.
 *
 * @throws InputError when it is no code, when a number is above 28, or when the numbers rise ("18/20/13")
 * @see ISO 4406:2021, section 4
 * @example
 * parseCode("14/12/>=7").at14 // { scale: 7, fewCounted: true }
 */
export function parseCode(text: string): CleanlinessCode {
  const parts = text.replaceAll(" ", "").split("/").map(partOf);
  const [at4, at6, at14, more] = parts;
  if (!at4 || !at6 || !at14 || more !== undefined) {
    throw new InputError("parseCode", "code", 'three scale numbers from 0 to 28 such as "18/16/13"', text);
  }
  requireFallingScale("parseCode", { at4: at4.scale, at6: at6.scale, at14: at14.scale });
  return { at4, at6, at14 };
}

function partOf(text: string): CodePart | null {
  if (text === ">28" || text === "*" || text === "-") return { scale: text, fewCounted: false };
  const [, prefix, digits] = /^(>=|≥)?(\d{1,2})$/.exec(text) ?? [];
  const scale = Number(digits ?? Number.NaN);
  return scale <= 28 ? { scale, fewCounted: prefix !== undefined } : null;
}
