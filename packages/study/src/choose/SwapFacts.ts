import type { CatalogueElement, System, SystemFilter } from "@thirstline/spec/system";
import type { Fineness } from "./captureBetween.js";
import type { SwapSide } from "./SwapAnswer.js";

/** What a swap is judged from. */
export interface SwapFacts {
  readonly system: System;
  readonly changed: System;
  readonly at: readonly string[];
  /** the filters there now, in the order of `at` */
  readonly filters: readonly SystemFilter[];
  /** what a catalogue says of them */
  readonly fitted: CatalogueElement | null;
  readonly other: CatalogueElement;
  readonly now: SwapSide;
  readonly then: SwapSide;
  readonly fineness: Fineness;
  /** K, coldest first */
  readonly temperatures: readonly number[];
}
