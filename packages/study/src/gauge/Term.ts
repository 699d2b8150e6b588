import type { Instant } from "./Instant.js";

/** What besides soil and the file's own error is fitted to a run: something that soil does not do. */
export type Term =
  /** one reading stands off */
  | { readonly kind: "outlier"; readonly at: number }
  /** from a reading on, the elements resist so much more than before, or less; from 0 on, all along */
  | { readonly kind: "step"; readonly at: number }
  /** from a reading on, less fuel flows than is noted, by a share */
  | { readonly kind: "thin"; readonly at: number }
  /** the colder, the more, beyond what viscosity does; from a temperature, K, down */
  | { readonly kind: "cold"; readonly below: number }
  /** resistance falls with time */
  | { readonly kind: "fall" };

/** How much resistance over clean a term adds at a reading, per unit of its size. */
export function termAt(term: Term, at: number, { temperature, time }: Instant, ratio: number, span: number): number {
  switch (term.kind) {
    case "outlier":
    case "thin":
      return 0;
    case "step":
      return at >= term.at ? 1 : 0;
    case "cold":
      return (Math.max(1, ratio) * Math.max(0, term.below - temperature)) / 10;
    case "fall":
      return -time / span;
  }
}

/** How fast what is read grows with the demand, Pa for all of it. */
export function perDemand({ table }: Instant, demand: number, ratio: number): number {
  return (table.at(1.05 * demand, ratio) - table.at(0.95 * demand, ratio)) / 0.1;
}
