import { capital } from "./capital.js";
import type { Words } from "./words.js";

/** A sentence in pieces with its first letter large; a figure at its beginning stays as it is. */
export function capitalWords(words: Words): Words {
  const [first, ...rest] = words;
  return typeof first === "string" ? [capital(first), ...rest] : words;
}
