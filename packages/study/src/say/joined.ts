import type { Words } from "./words.js";

/** Clauses one after another, with commas and a last "and". */
export function joined(parts: readonly Words[]): Words {
  return parts.flatMap((part, at) => (at === 0 ? part : [at === parts.length - 1 ? ", and " : ", ", ...part]));
}
