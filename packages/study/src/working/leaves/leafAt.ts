import type { Asked } from "../Asked.js";
import type { Blocks, Leaf, LeafRow } from "./Leaf.js";
import { lifeLeaves } from "./lifeLeaves.js";
import { checkLeaves, curveLeaves } from "./pointLeaves.js";

/** Every question whose figures all have a working, with the figure of each place in its answer. */
export const leavesOf = { check: checkLeaves, curve: curveLeaves, life: lifeLeaves } as const satisfies Record<
  string,
  readonly LeafRow[]
>;

/** A question whose figures all have a working. */
export type WorkedQuestion = keyof typeof leavesOf;

/**
 * Which working belongs to a figure of an answer in JSON: every `{ value, unit }` of it has one.
 *
 * @param question of the answer
 * @param answer as `--json` gives it, one of its `answers`
 * @param path to the figure, such as ["points", 0, "vacuum", "middle"]; of a column, with the place in it at the end
 * @param options `ownTemperature` where the question was asked at the file's own temperature, and not at another
 * @returns null for a path that is no figure
 */
export function leafAt(
  question: WorkedQuestion,
  answer: object,
  path: readonly (string | number)[],
  { ownTemperature = false } = {},
): Leaf | null {
  const last = path.at(-1);
  const column = typeof last === "number" ? last : null;
  const keys = column === null ? path : path.slice(0, -1);
  const blocks = blocksAlong(answer, keys);
  const end = keys.at(-1);
  const isEnd = end === "low" || end === "high";
  const pattern = isEnd ? [...keys.slice(0, -1), "middle"] : keys;
  const row = leavesOf[question].find(([own]) => matches(own, pattern));
  const block = blocks.at(-1);
  if (row === undefined || block === undefined) return null;
  const [, figure] = row;
  const name = typeof figure === "string" ? figure : figure(block, around(blocks));
  if (name === "") return null;
  const which = isEnd || end === "middle" ? end : null;
  return { figure: full(name, which), asked: askedAt(blocks, keys, { column, ownTemperature }) };
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
