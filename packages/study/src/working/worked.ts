import type { QuantityKind } from "../say/units.js";
import type { Formula } from "./Formula.js";
import { evaluatePlain } from "./maths/evaluate.js";
import type { Check, Input, PartPath, Step } from "./Step.js";

/** What else is known of a step than what it is worked out from. */
export interface StepMore {
  /** what it is called; the formula's own words when left out */
  readonly name?: string;
  /** the figure as the answer has it, SI; what the formula comes to when left out */
  readonly value?: number;
  readonly kind?: QuantityKind;
  readonly part?: PartPath | undefined;
  readonly scale?: number;
}

/** A step worked out by a formula. Several steps may be put in for a letter that the formula goes over. */
export function worked<Letter extends string>(
  formula: Formula<Letter>,
  given: Readonly<Record<Letter, Step | readonly Step[]>>,
  more: StepMore = {},
): Step {
  const inputs = Object.entries<Step | readonly Step[]>(given).map(([letter, put]): Input => {
    const list = Array.isArray(put);
    return { letter, steps: list ? (put as readonly Step[]) : [put as Step], list };
  });
  const { unit, meaning, kind } = formula.result;
  return {
    name: more.name ?? meaning,
    value: more.value ?? evaluatePlain(formula, inputs),
    unit,
    kind: more.kind ?? kind,
    origin: { by: "formula", formula, inputs },
    ...partOf(more),
    ...(more.scale === undefined ? {} : { scale: more.scale }),
  };
}

/** What a step without a formula is: a name, an SI value with its unit, and how people read it. */
export interface Plain extends StepMore {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
}

/** A figure the file states. */
export function fromFile(path: string, plain: Plain): Step {
  return { ...bare(plain), origin: { by: "file", path } };
}

/** A figure that is published, or exact by definition. */
export function fromSource(source: string, plain: Plain): Step {
  return { ...bare(plain), origin: { by: "source", source } };
}

/** A figure asked for on the command line, in place of the file's. */
export function asked(option: string, plain: Plain): Step {
  return { ...bare(plain), origin: { by: "asked", option } };
}

/** A figure counted or chosen, in words, from others. */
export function inWords(words: string, plain: Plain, from: readonly Step[] = []): Step {
  return { ...bare(plain), origin: { by: "words", words, from } };
}

/** A figure found by a search, with what proves it. */
export function searched(words: string, plain: Plain, checks: readonly Check[]): Step {
  return { ...bare(plain), origin: { by: "search", words, checks } };
}

/** The same step by another name. */
export function renamed(step: Step, name: string, kind: QuantityKind | null = step.kind): Step {
  return { ...step, name, kind };
}

function bare({ name, value, unit, kind, part }: Plain): Omit<Step, "origin"> {
  return { name, value, unit, kind: kind ?? null, ...partOf({ part }) };
}

function partOf({ part }: Pick<StepMore, "part">): Pick<Step, "part"> {
  return part === undefined ? {} : { part };
}
