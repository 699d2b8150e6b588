import type { Efficiency } from "../capture/Capture.js";
import type { LoadingLaw } from "../loading/LoadingLawKinds.js";

/** A filter whose soil is followed. */
export interface SoilElement {
  /** name of the filter in the circuits; no two share one */
  readonly name: string;
  /** how its medium's resistance grows with soil, per kg; null when nothing is known of it, and then it does not grow */
  readonly law: LoadingLaw | null;
  /** what it catches by size; null when not known, and then it catches nothing */
  readonly efficiency: Efficiency | null;
  /** soil on it at the start, kg */
  readonly soil: number;
}
