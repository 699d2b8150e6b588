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
  /** water on it at the start, kg; counts where an element swells, none when left out */
  readonly water?: number;
  /** share of the free water that comes to it which it keeps, 0 to 1; none when left out */
  readonly separates?: number;
  /** how its medium's resistance grows with the water it keeps, per kg; a bowl swells nothing, and leaves this out */
  readonly swells?: LoadingLaw;
}
