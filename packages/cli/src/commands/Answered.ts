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
