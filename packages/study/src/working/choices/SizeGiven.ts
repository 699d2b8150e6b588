import type { CatalogueElement, System } from "@thirstline/spec/system";
import type { SizeAnswer } from "../../choose/sizing/SizeAnswer.js";
import type { SizeOptions } from "../../choose/sizing/SizeOptions.js";

/** What `size` was asked with, and what its lives were drawn with. */
export interface SizeAsked extends SizeOptions {
  readonly draws?: number;
  readonly seed?: number;
  /** cost of one stoppage, in the catalogue's own currency */
  readonly stoppage?: number;
}

/** What the figures of one arrangement are worked out from. */
export interface SizeGiven {
  readonly file: System;
  readonly elements: readonly CatalogueElement[];
  readonly answer: SizeAnswer;
  readonly options: SizeAsked;
}
