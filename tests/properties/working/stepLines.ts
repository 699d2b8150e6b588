import { type Step, stepsBefore } from "@thirstline/study/working";

/**
 * Every step that some workings rest on, a line each: what it is called, in which words and from which steps it was reached,
 * and what it comes to where no formula or search proves that. Steps that are told alike are told once, as they are met first.
 */
export function stepLines(steps: Iterable<Step>): string[] {
  const lines = new Map<string, string>();
  const seen = new Set<Step>();
  const visit = (step: Step): void => {
    if (seen.has(step)) return;
    seen.add(step);
    const told = toldOf(step);
    const kind = told.replace(NUMBER, "#");
    if (!lines.has(kind)) lines.set(kind, told + figureOf(step));
    for (const before of stepsBefore(step)) visit(before);
  };
  for (const step of steps) visit(step);
  return [...lines.values()];
}

function figureOf({ value, origin }: Step): string {
  return ["formula", "search", "draws"].includes(origin.by) ? "" : ` | ${Number(value.toPrecision(6))}`;
}

/** What marks one of many steps told alike: which size, moment or set. */
const NUMBER = /\d[\d.,]*( to \d[\d.,]*)?/g;

function toldOf(step: Step): string {
  const { name, unit, kind, part } = step;
  const place = part === undefined ? "" : ` @ ${part.join(".")}`;
  return `${name} (${kind ?? "SI"}, ${unit})${place} | ${originOf(step)}`;
}

function originOf({ origin }: Step): string {
  // Of names told alike the first stands for all.
  const names = (steps: readonly Step[]) =>
    [...new Map(steps.toReversed().map(({ name }) => [name.replace(NUMBER, "#"), name])).values()].reverse().join(", ");
  switch (origin.by) {
    case "formula": {
      const put = origin.inputs.map(({ letter, steps, list }) => `${letter}${list ? "[]" : ""} ${names(steps)}`);
      return `${origin.formula.id}: ${put.join("; ")}`;
    }
    case "file":
      return `file ${origin.path}`;
    case "asked":
      return `asked ${origin.option}`;
    case "source":
      return `source ${origin.source}`;
    case "words":
      return `words ${origin.words}: ${names(origin.from)}`;
    case "draws":
      return `draws ${origin.words}, varying ${origin.varying.join(", ")}: ${names(origin.from)}`;
    case "search": {
      const checks = origin.checks.map(
        ({ words, left, relation, right }) => `${words}: ${left.name} ${relation} ${right.name}`,
      );
      return `search ${origin.words}: ${checks.join("; ")}`;
    }
  }
}
