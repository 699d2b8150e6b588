import type { Proof } from "@thirstline/study/working";

/** What working everything out anew came to, in a sentence. */
export function proofWords({ formulas, checks, misses }: Proof): string {
  if (formulas + checks === 0) return "Nothing here is worked out by a formula.";
  if (misses.length > 0) {
    const names = misses.map(({ name }) => name).join(", ");
    return `Worked out anew, these did not come out, which is a fault of this page: ${names}.`;
  }
  const searches = checks === 0 ? "" : ` and ${checks} ${checks === 1 ? "check of a search" : "checks of searches"}`;
  return `Worked out anew just now, units and all, down to the file’s own values: ${formulas} ${formulas === 1 ? "formula" : "formulas"}${searches}, each the same to a billionth.`;
}
