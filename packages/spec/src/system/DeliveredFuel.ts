import type { CountsPerMl, HeldFixed, TestDust } from "@thirstline/core";

/** How dirty fuel is, by at most one of code, solids and counts. */
export interface SystemSolids {
  /** ISO 4406 code, such as "18/16/13", without spaces */
  readonly code?: string;
  /** solids, kg/m3 */
  readonly solids?: number;
  /** test dust whose sizes the solids are taken to have; only with solids */
  readonly dust?: TestDust;
  /** particles per mL of 4, 6 and 14 um(c) and up, two sizes or all three; the one figure of a system that is not SI */
  readonly counts?: Partial<CountsPerMl>;
}

/** How dirty and wet the fuel comes. */
export interface SystemDeliveredFuel extends SystemSolids {
  /** water, kg/m3 */
  readonly water?: number;
  /** what stays as it is while elements fill: the fuel as it is delivered, or as it leaves the tank */
  readonly held?: HeldFixed;
  /** one delivery dirtier than the rest: running time at which it is taken, s, and its volume, m3 */
  readonly dirtyDelivery?: SystemSolids & { readonly after: number; readonly volume: number };
}
