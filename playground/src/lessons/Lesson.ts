import type { KindName } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import type { QuantityKind } from "@thirstline/study";
import type { Figure } from "./Figure.js";
import type { Words } from "./words.js";

/** The demonstration machines: a system by the name of its file. Throws where there is none of that name. */
export type Yard = (file: string) => System;

/** One lesson: what it is called and, worked out from the yard's machines, what it says. */
export interface Lesson {
  /** its place in the address */
  readonly id: string;
  readonly title: string;
  /** what the learner will be able to do after it; ends the sentence "After it you can ..." */
  readonly after: string;
  readonly tell: (yard: Yard) => Told;
}

/** All a lesson says and shows. Every figure in it comes of an answer of the study. */
export interface Told {
  /** as the learner finds it; drawn on the printed sheet */
  readonly machine: System;
  /** paragraphs */
  readonly situation: readonly Words[];
  readonly first: Question;
  readonly shows: Shows;
  /** paragraphs */
  readonly explanation: readonly Words[];
  /** the sum on one line or several, formula and figures */
  readonly working: readonly Words[];
  /** figures of the system shown whose working explains it, as `workingOf` names them; none where it works out no such figure */
  readonly explains: readonly string[];
  readonly second: Question;
  /** what can hurt, and who decides, where the lesson touches work on the machine */
  readonly safety?: readonly Words[];
  /** where published facts come from; common practice says so */
  readonly sources?: readonly Words[];
}

/** What the learner commits to before anything is shown. */
export type Question = NumberQuestion | ChoiceQuestion;

export interface NumberQuestion {
  readonly form: "number";
  readonly ask: Words;
  /** names the box */
  readonly label: string;
  /** how it is shown and how it is read */
  readonly kind: QuantityKind;
  readonly reads: KindName;
  /** SI, computed */
  readonly right: number;
  /** share of the right figure within which a prediction counts as near */
  readonly near: number;
  /** why it is that */
  readonly because: Words;
  /** figures a common wrong idea leads to, SI, and what that idea misses */
  readonly slips: readonly { readonly value: number; readonly misses: Words }[];
  /** said of any other wrong figure */
  readonly otherwise: Words;
}

export interface ChoiceQuestion {
  readonly form: "choice";
  readonly ask: Words;
  readonly choices: readonly Choice[];
}

interface Choice {
  readonly label: Words;
  /** by the model */
  readonly right: boolean;
  /** why it is right; or the idea behind the wrong choice and what it misses */
  readonly answer: Words;
}

/** The live model: one control, what is drawn, and what is read off it. */
export interface Shows {
  /** what to try, and what to look at */
  readonly caption: Words;
  readonly control: Control;
  /** the system at a value of the control */
  readonly system: (value: number) => System;
  readonly figure: (value: number) => Figure;
  readonly reads: (value: number) => readonly Reading[];
}

export type Control =
  | {
      readonly by: "range";
      readonly label: string;
      readonly kind: QuantityKind;
      readonly reads: KindName;
      /** SI */
      readonly min: number;
      readonly max: number;
      readonly start: number;
      readonly cold?: boolean;
    }
  | {
      readonly by: "choice";
      readonly label: string;
      readonly options: readonly { readonly label: Words; readonly value: number }[];
      readonly start: number;
    };

/** A figure read off the live model. */
interface Reading {
  readonly label: string;
  readonly words: Words;
}
