import type { SystemFilter, SystemSpread } from "../system/index.js";

/** One element of a catalogue, in SI; what is left out was not stated. */
export interface CatalogueElement {
  /** no two elements of a catalogue share it */
  readonly name: string;
  /** as it is when new and fitted the right way round; its name is the element's */
  readonly filter: SystemFilter;
  /** most flow its maker allows, m3/s */
  readonly mostFlow?: number;
  /** fuel it holds when full, m3 */
  readonly volume?: number;
  /** of one, in the catalogue's own currency */
  readonly price?: number;
  /** work of changing one, s */
  readonly labour?: number;
  /** figures stated with a spread; the paths start at `filter` */
  readonly spreads: readonly SystemSpread[];
}
