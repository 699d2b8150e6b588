import type { Words } from "../say/words.js";

/** One line of a card. */
export interface CardItem {
  /** a note to read, a step to tick, or to fill in by hand: a short field, or a whole line */
  readonly kind: "note" | "step" | "field" | "line";
  readonly words: Words;
}

/** A part of a card. */
export interface CardSection {
  readonly name: CardSectionName;
  readonly title: string;
  readonly items: readonly CardItem[];
}

/** The sections in the order they stand. */
export type CardSectionName =
  | "cautions"
  | "at hand"
  | "take off"
  | "fit"
  | "prime"
  | "water"
  | "start"
  | "otherwise"
  | "log";
