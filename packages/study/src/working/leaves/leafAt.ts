import type { Asked } from "../Asked.js";
import type { ChoiceQuestion } from "../choices/Choice.js";
import { cardAsked, cardLeaves, cardOf } from "./cardLeaves.js";
import { fleetLeaves, fleetOf } from "./fleetLeaves.js";
import { gaugeLeaves, gaugeOf } from "./gaugeLeaves.js";
import type { Blocks, Leaf, LeafRow } from "./Leaf.js";
import { lifeLeaves } from "./lifeLeaves.js";
import { checkLeaves, curveLeaves } from "./pointLeaves.js";
import { remedyLeaves, remedyOf } from "./remedyLeaves.js";
import { sizeLeaves, sizeOf } from "./sizeLeaves.js";
import { swapLeaves, swapSideOf } from "./swapLeaves.js";

/** Every question whose figures all have a working, with the figure of each place in its answer. */
export const leavesOf = { check: checkLeaves, curve: curveLeaves, life: lifeLeaves } as const satisfies Record<
  string,
  readonly LeafRow[]
>;

/** A question whose figures all have a working. */
export type WorkedQuestion = keyof typeof leavesOf;

/** A question whose answer is about several things, each with figures of its own. */
export type MemberQuestion = "fleet" | "gauge";

/** The same of the questions that compare systems. */
export const choiceLeaves: Readonly<Record<ChoiceQuestion, readonly LeafRow[]>> = {
  swap: swapLeaves,
  size: sizeLeaves,
  remedy: remedyLeaves,
  card: cardLeaves,
};

/** Which of the systems compared a figure belongs to. */
const ofWhich: Readonly<Record<ChoiceQuestion, (path: readonly (string | number)[], answer: object) => string>> = {
  swap: swapSideOf,
  size: sizeOf,
  remedy: remedyOf,
  card: cardOf,
};

/**
 * Which working belongs to a figure of an answer in JSON: every `{ value, unit }` of it has one. `workingOf` takes what it
 * hands back, or `choiceWorking` where the question compares systems, or `fleetWorking` for a yard and `gaugeWorking` for
 * readings.
 *
 * @param question of the answer
 * @param answer as `--json` gives it, one of its `answers`
 * @param path to the figure, such as ["points", 0, "vacuum", "middle"]; of a column, with the place in it at the end
 * @param options `ownTemperature` where the question was asked at the file's own temperature, and not at another
 * @returns null for a path that is no figure
 */
export function leafAt(
  question: WorkedQuestion | ChoiceQuestion | MemberQuestion,
  answer: object,
  path: readonly (string | number)[],
  { ownTemperature = false } = {},
): Leaf | null {
  const last = path.at(-1);
  // A place in a column stands within a figure of many values; a figure in a list is one of its own.
  const inside = blocksAlong(answer, path);
  const column = typeof last === "number" && "unit" in (inside.at(-1) ?? {}) ? last : null;
  const keys = column === null ? path : path.slice(0, -1);
  const blocks = column === null ? inside : inside.slice(0, -1);
  const end = keys.at(-1);
  const isEnd = end === "low" || end === "high";
  const pattern = isEnd ? [...keys.slice(0, -1), "middle"] : keys;
  const row = rowsOf(question).find(([own]) => matches(own, pattern));
  const block = blocks.at(-1);
  if (row === undefined || block === undefined) return null;
  const [, figure] = row;
  const name = typeof figure === "string" ? figure : figure(block, around(blocks));
  if (name === "") return null;
  const which = isEnd || end === "middle" ? end : null;
  const title = full(name, which);
  if (question === "fleet") return { figure: title, asked: {}, of: fleetOf(keys) };
  if (question === "gauge") {
    return { figure: column === null ? title : `${title} ${column + 1}`, asked: {}, of: gaugeOf(keys, answer) };
  }
  const own = question === "card" ? cardAsked(blocks) : pointAsked(blocks);
  if (isChoice(question)) return { figure: title, asked: own, of: ofWhich[question](keys, answer) };
  return { figure: title, asked: askedAt(blocks, keys, { column, ownTemperature }) };
}

function isChoice(question: WorkedQuestion | ChoiceQuestion | MemberQuestion): question is ChoiceQuestion {
  return question in choiceLeaves;
}

function rowsOf(question: WorkedQuestion | ChoiceQuestion | MemberQuestion): readonly LeafRow[] {
  if (question === "fleet") return fleetLeaves;
  if (question === "gauge") return gaugeLeaves;
  return isChoice(question) ? choiceLeaves[question] : leavesOf[question];
}

/** The temperature of the check that a figure stands in. */
function pointAsked(blocks: Blocks): Asked {
  const point = blocks.findLast((block) => "binds" in block || "overClean" in block) ?? blocks[0];
  const temperature = figureValue(point?.temperature ?? (point?.worst as Blocks[number] | undefined)?.temperature);
  return typeof temperature === "number" ? { temperature } : {};
}

/** The nearest block around the last one that is no list. */
function around(blocks: Blocks): Readonly<Record<string, unknown>> {
  return blocks.slice(0, -1).findLast((block) => !Array.isArray(block)) ?? {};
}

/** Draws are told by what so many of them stay below, bands by their ends. */
function full(name: string, which: "low" | "middle" | "high" | null): string {
  if (name.endsWith(" of draws")) {
    const share = which === "low" ? "10 %" : which === "high" ? "90 %" : "50 %";
    return name.replace(/ of draws$/, `, ${share} of draws`);
  }
  return which === "low" || which === "high" ? `${name}, ${which} end` : name;
}

function matches(pattern: string, path: readonly (string | number)[]): boolean {
  const steps = pattern.split(".");
  return steps.length === path.length && steps.every((step, at) => step === "*" || step === String(path[at]));
}

function blocksAlong(answer: object, path: readonly (string | number)[]): Blocks {
  const blocks: Record<string, unknown>[] = [];
  let node: unknown = answer;
  for (const step of path) {
    if (typeof node !== "object" || node === null) return [];
    blocks.push(node as Record<string, unknown>);
    node = (node as Record<string | number, unknown>)[step];
  }
  return blocks;
}

/** The temperature of the point a figure stands in, and of a column the demand it stands at. */
function askedAt(
  blocks: Blocks,
  path: readonly (string | number)[],
  { column, ownTemperature }: { readonly column: number | null; readonly ownTemperature: boolean },
): Asked {
  if (path[0] === "trace") return column === null ? {} : { moment: column };
  const point = path[0] === "points" ? blocks[2] : undefined;
  const temperature = figureValue(point?.temperature);
  const demands = (point?.demand as { readonly value?: readonly number[] } | undefined)?.value;
  const at = column === null ? undefined : demands?.[column];
  return {
    ...(typeof temperature === "number" && !ownTemperature ? { temperature } : {}),
    ...(at === undefined ? {} : { at }),
  };
}

function figureValue(figure: unknown): unknown {
  return typeof figure === "object" && figure !== null && "value" in figure ? figure.value : undefined;
}
