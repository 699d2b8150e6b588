import { InputError, parseCode } from "@thirstline/core";
import type { CatalogueElement, System } from "@thirstline/spec/system";
import { temperaturesOf } from "../temperaturesOf.js";
import { groundsOf, rangeOf } from "./groundsOf.js";
import { layoutOf } from "./layoutOf.js";
import { nearestMiss } from "./nearestMiss.js";
import { rankedOf } from "./ranked.js";
import { Search } from "./Search.js";
import { countOf, type Picked } from "./SearchKinds.js";
import type { SizeAnswer, SizeFailed } from "./SizeAnswer.js";
import type { SizeOptions } from "./SizeOptions.js";
import { type Side, stackOf } from "./stack.js";
import type { Tally } from "./Tally.js";

/** How far a search has come. */
export interface SizeProgress {
  /** arrangements judged or ruled out, of all */
  readonly done: number;
  readonly of: number;
}

/** Most arrangements that one search goes through. */
export const MOST_ARRANGEMENTS = 3_000_000;

/**
 * How many, which, how arranged? Every arrangement of up to so many equal elements side by side in up to three stages one
 * after another, of every element of a catalogue, with each bore: all that hold with 20 % in hand at every temperature,
 * with clean elements under the clean limit, keep to the code or fineness asked, and last the interval at the likely
 * figures. Elements whose catch or capacity nobody states are left out, and counted.
 *
 * Exhaustive. What begins with stages that fail is ruled out as a whole; drops are summed, and where a sum comes within a
 * hundredth of a Pa of a limit the whole model decides.
 *
 * @param system what it has in the new elements' place makes way
 * @param elements of a catalogue
 * @returns a generator that hands over how far it has come, now and then, and returns the answer
 * @throws InputError for an option out of range, or more than three million arrangements
 */
export function* sizeSteps(
  system: System,
  elements: readonly CatalogueElement[],
  options: SizeOptions = {},
): Generator<SizeProgress, SizeAnswer> {
  const { parallel = 4, stages = 2, bores = [], keep = 20 } = options;
  requireWhole("parallel", parallel, 8);
  requireWhole("stages", stages, 3);
  requireWhole("keep", keep, 100_000);
  if (elements.length === 0) throw new InputError("size", "elements", "one or more", 0);
  const stack = stackOf(system, options.side ?? sideOf(system));
  if (stack.side === "delivery" && system.delivery === undefined) {
    throw new InputError("size", "side", "suction, for no delivery side is in the file", "delivery");
  }
  const asked = {
    code: options.code ?? system.protection?.code ?? null,
    rating: options.rating ?? null,
    interval: options.interval ?? system.service?.interval ?? null,
  };
  if (asked.code !== null) parseCode(asked.code);
  const temperatures = rangeOf(options.temperatures?.length ? options.temperatures : temperaturesOf(system));
  const widths: (number | null)[] = bores.length === 0 ? [null] : [...new Set(bores)];
  const candidates = widths.length * countOf(elements.length * parallel, stages);
  const common = {
    question: "size" as const,
    system: system.name,
    side: stack.side,
    replaced: stack.replaced,
    asked,
    temperatures,
    candidates,
  };
  const reasons = groundsOf(system, asked, temperatures);
  if (reasons.length > 0 || asked.interval === null) return { ...common, ...nothing, verdict: "cannot say", reasons };
  if (candidates > MOST_ARRANGEMENTS) {
    const most = `at most ${MOST_ARRANGEMENTS}; take fewer stages, fewer side by side, fewer bores or a shorter catalogue`;
    throw new InputError("size", "number of arrangements", most, candidates);
  }
  const search = new Search({
    stack,
    elements,
    parallel,
    stages,
    bores: widths,
    temperatures,
    ...asked,
    interval: asked.interval,
  });
  for (const done of search.run()) yield { done, of: candidates };
  const { found, failed } = search.tally;
  const ranked = rankedOf(found, { stack, elements, system, interval: asked.interval, options, keep });
  return {
    ...common,
    ...ranked,
    verdict: found.length > 0 ? "yes" : "no",
    reasons: [],
    passing: found.length,
    failed: failedOf(failed, elements),
    nearest: found.length > 0 ? null : nearestMiss(failed, { system, elements, side: stack.side, temperatures }),
    effort: search.effort,
  };
}

const nothing = {
  passing: 0,
  best: { cost: null, vacuum: null, changes: null },
  arrangements: [],
  failed: [],
  nearest: null,
  effort: { spared: 0, bySums: 0, byModel: 0, orders: 0, lives: 0 },
};

function requireWhole(name: string, value: number, most: number): void {
  if (Number.isInteger(value) && value >= 1 && value <= most) return;
  throw new InputError("size", name, `a whole number from 1 to ${most}`, value);
}

function sideOf(system: System): Side {
  const has = (side: Side) => stackOf(system, side).replaced.length > 0;
  return !has("suction") && system.delivery !== undefined && has("delivery") ? "delivery" : "suction";
}

function failedOf(failed: Tally["failed"], elements: readonly CatalogueElement[]): SizeFailed[] {
  return [...failed]
    .map(([by, { count, example }]) => ({ by, count, example: namesOf(example, elements) }))
    .sort((one, other) => other.count - one.count);
}

function namesOf(picked: Picked, elements: readonly CatalogueElement[]): SizeFailed["example"] {
  const { stages, bore } = layoutOf(elements, picked);
  return { stages: stages.map(({ element, count }) => ({ element: element.name, count })), bore };
}
