import { type Step, stepsBefore } from "@thirstline/study/working";

// What tests ask of a working, step by step.

/** What was put in for a letter of a step's formula; nothing where there is none. */
export function putIn(step: Step | null | undefined, letter: string): readonly Step[] {
  if (step?.origin.by !== "formula") return [];
  return step.origin.inputs.find((input) => input.letter === letter)?.steps ?? [];
}

/** The same where there must be one step at least: the first. */
export function onePut(step: Step | null | undefined, ...letters: readonly string[]): Step {
  let found = step;
  for (const letter of letters) {
    const [inner] = putIn(found, letter);
    if (!inner) throw new Error(`nothing is put in for ${letter}`);
    found = inner;
  }
  if (!found) throw new Error("no step");
  return found;
}

/** Every step that a step rests on, itself first, each once. */
export function stepsIn(step: Step | null | undefined): readonly Step[] {
  const seen = new Set<Step>();
  const visit = (one: Step): void => {
    if (seen.has(one)) return;
    seen.add(one);
    stepsBefore(one).forEach(visit);
  };
  if (step) visit(step);
  return [...seen];
}

/** What a step without a formula says. */
export type Told = readonly [name: string, value: number, unit: string, kind: string | null, from: string];

/** A step's figure, and in which words, from which source or by what it was reached. */
export function told({ name, value, unit, kind, origin }: Step): Told {
  return [name, value, unit, kind, saidBy(origin)];
}

function saidBy(origin: Step["origin"]): string {
  switch (origin.by) {
    case "words":
    case "search":
    case "draws":
      return origin.words;
    case "source":
      return origin.source;
    case "file":
      return origin.path;
    case "asked":
      return `asked: ${origin.option}`;
    case "formula":
      return origin.formula.id;
  }
}
