import type { Caution } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";

/** A system with its answer. */
export interface Answered<Answer> {
  readonly file: string;
  readonly system: System;
  /** what the file leaves open */
  readonly fileCautions: readonly Caution[];
  readonly answer: Answer;
}

/** The same with what draws of the file's spreads make of each of its points; left out where none bear on it. */
export interface Spread<Answer, PointSpread> extends Answered<Answer> {
  readonly spreads?: readonly PointSpread[];
}
