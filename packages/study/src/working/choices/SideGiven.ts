import type { CatalogueElement, System } from "@thirstline/spec/system";
import type { CostGiven } from "../../choose/yearlyCost.js";
import type { Asked } from "../Asked.js";

/** One side of a swap, as its figures are worked out. */
export interface SideGiven {
  readonly system: System;
  /** names of the places */
  readonly at: readonly string[];
  /** K, coldest first */
  readonly temperatures: readonly number[];
  /** what a catalogue says of the element there */
  readonly element: CatalogueElement | null;
  readonly options: CostGiven;
  readonly asked: Asked;
}
