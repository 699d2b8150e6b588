import type { System } from "@thirstline/spec/system";
import type { Asked } from "../Asked.js";
import type { FigureMaker } from "../figures/FigureMaker.js";

/** A question that compares systems: each of its figures is one of a system as it is, or with something changed. */
export type ChoiceQuestion = "swap" | "size" | "remedy" | "card";

/** A system that is compared, as it is or changed. */
export interface Variant {
  readonly system: System;
  /** what is changed, in words; null for the file's own */
  readonly change: string | null;
  /** what it is asked with when nothing else is said */
  readonly asked: Asked;
  /** figures that the question has of it beside those of `check`, `curve` and `life` */
  readonly own: readonly FigureMaker[];
}

/** What a question compares, by names such as "now", "changed", "single 2" or "arrangement 0". */
export interface Choice {
  readonly question: ChoiceQuestion;
  /** as the file has it */
  readonly file: System;
  readonly variants: ReadonlyMap<string, Variant>;
}
