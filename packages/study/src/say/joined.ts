import type { Words } from "./words.js";

/** Clauses one after another, with commas and a last "and", or with `between` throughout. */
export function joined(parts: readonly Words[], between?: string): Words {
  const before = (at: number) => between ?? (at === parts.length - 1 ? ", and " : ", ");
  return parts.flatMap((part, at) => (at === 0 ? part : [before(at), ...part]));
}
