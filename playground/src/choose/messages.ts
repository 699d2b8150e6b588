import type { CatalogueResult } from "@thirstline/spec";
import type { CatalogueElement, System } from "@thirstline/spec/system";
import type {
  ArrangementFigures,
  RemedyAnswer,
  RemedyOptions,
  SizeAnswer,
  SizeOptions,
  SwapAnswer,
  SwapOptions,
} from "@thirstline/study";

/** What can be asked of the worker. */
export type Asked =
  | { readonly kind: "read"; readonly bytes: Uint8Array; readonly file: string }
  | {
      readonly kind: "swap";
      readonly system: System;
      readonly at: readonly string[];
      readonly with: CatalogueElement;
      readonly options: SwapOptions;
      readonly draws: number;
    }
  | {
      readonly kind: "size";
      readonly system: System;
      readonly elements: readonly CatalogueElement[];
      readonly options: SizeOptions;
      readonly stoppage: number | null;
      readonly draws: number;
      /** how many arrangements to draw at least */
      readonly few: number;
    }
  | { readonly kind: "remedy"; readonly system: System; readonly options: RemedyOptions };

/** A found arrangement's figures, by what it is; see `keyOf`. */
export type FiguresOf = ReadonlyMap<string, ArrangementFigures>;

/** What the worker tells. An answer may come again, with more of it drawn, until `done`. */
export type Told =
  | { readonly kind: "read"; readonly result: CatalogueResult; readonly done: true }
  | { readonly kind: "swap"; readonly answer: SwapAnswer; readonly done: boolean }
  | { readonly kind: "size"; readonly answer: SizeAnswer; readonly figures: FiguresOf; readonly done: boolean }
  | { readonly kind: "remedy"; readonly answer: RemedyAnswer; readonly done: true }
  /** it has no answer, in words */
  | { readonly kind: "refused"; readonly why: string; readonly done: true };
