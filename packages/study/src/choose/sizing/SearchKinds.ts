import type { CatalogueElement } from "@thirstline/spec/system";
import type { AskedRating } from "../betaAt.js";
import type { Stack } from "./stack.js";

/** What is searched. */
export interface SearchGiven {
  readonly stack: Stack;
  readonly elements: readonly CatalogueElement[];
  /** most side by side, and most stages */
  readonly parallel: number;
  readonly stages: number;
  readonly bores: readonly (number | null)[];
  /** K */
  readonly temperatures: readonly number[];
  readonly code: string | null;
  readonly rating: AskedRating | null;
  /** s */
  readonly interval: number;
}

/** One arrangement: places in the list of elements, counts and bore. */
export interface Picked {
  readonly elements: readonly number[];
  readonly counts: readonly number[];
  readonly bore: number | null;
}

/** One arrangement found to meet every limit. */
export interface Found extends Picked {
  readonly vacuum: number;
  readonly code: string;
}

/** How many arrangements there are with up to so many stages. */
export function countOf(perStage: number, stages: number): number {
  return Array.from({ length: stages }, (_, at) => perStage ** (at + 1)).reduce((sum, one) => sum + one, 0);
}
