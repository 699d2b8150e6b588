import type { SystemPart } from "./Part.js";

/** How air gets into a tank: freely, at a vacuum, Pa, that a spring needs, or not at all. */
export type SystemVent =
  | { readonly kind: "open" }
  | { readonly kind: "spring"; readonly opening: number }
  | { readonly kind: "blocked" };

/** A tank. */
export interface SystemTank {
  readonly name: string;
  /** fuel over the pick-up when full, m */
  readonly fullDepth: number;
  /** fuel over the pick-up when low, m; verdicts are taken here */
  readonly lowDepth: number;
  readonly vent: SystemVent;
  /** m3 */
  readonly volume?: number;
  /** from the pick-up to where several tanks join; empty for the only tank */
  readonly path: readonly SystemPart[];
}
