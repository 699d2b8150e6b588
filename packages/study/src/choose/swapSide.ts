import { life as followLife } from "@thirstline/core";
import type { CatalogueElement, System } from "@thirstline/spec/system";
import type { CheckPoint } from "../check/CheckAnswer.js";
import { check } from "../check/check.js";
import { factsOf } from "../life/factsOf.js";
import type { LifeAnswer, LifeCaution } from "../life/LifeAnswer.js";
import { life } from "../life/life.js";
import { spreadOf } from "../spread/spreadOf.js";
import { mapParts } from "./mapParts.js";
import type { SwapSide } from "./SwapAnswer.js";
import { starvesBelow } from "./starvesBelow.js";
import { type CostGiven, yearlyCost } from "./yearlyCost.js";

/** What one side is worked out from. */
export interface SideGiven {
  readonly system: System;
  /** what is known of the element at the places, for its price and work */
  readonly element: CatalogueElement | null;
  readonly name: string;
  readonly at: readonly string[];
  /** K, coldest first */
  readonly temperatures: readonly number[];
  /** drawn lives, or how to draw them; null for none */
  readonly lives: Float64Array | (() => Float64Array) | null;
  readonly cost: CostGiven;
}

/** One side of a swap: what a system does with the elements it has. */
export function swapSide(given: SideGiven): SwapSide {
  const { system, temperatures, lives } = given;
  const cold = temperatures[0] as number;
  const warm = temperatures.at(-1) as number;
  const { points } = check(system, { temperatures: [warm, cold] });
  const found = life(system);
  const known = found.horizon > 0;
  const interval = system.service ? { time: system.service.interval, atMost: system.service.atMost ?? 0 } : null;
  const drawn = known && typeof lives === "function" ? lives() : lives;
  const spread = known && drawn instanceof Float64Array ? spreadOf(drawn, interval) : null;
  return {
    element: given.name,
    code: found.cleanliness.at(-1)?.code ?? null,
    captureKnown: !found.cautions.some(({ code }) => code === "capture unknown"),
    fillingUnknown: fillingUnknown(found, given.at),
    warm: points[0] as CheckPoint,
    cold: points[1] as CheckPoint,
    inHandAtChange: known ? inHandAtChange(system, cold) : null,
    starves: starvesBelow(system, warm),
    lifeKnown: known,
    lifeReasons: found.reasons,
    life: found.end?.time ?? null,
    change: found.change,
    spread,
    cost: yearlyCost(given, found, interval ? (spread?.chance ?? null) : null),
  };
}

/** Why no law tells how an element fills. */
const NO_LAW: readonly LifeCaution["code"][] = ["no capacity", "tests fit no law", "nothing to multiply"];

/** Without its catch or its capacity an element counts as one that never fills, and a life that rests on it is none. */
function fillingUnknown({ cautions }: LifeAnswer, at: readonly string[]): SwapSide["fillingUnknown"] {
  const said = cautions.flatMap((one) => ("element" in one && at.includes(one.element) ? [one.code] : []));
  if (said.includes("capture unknown")) return "catch";
  return said.some((code) => NO_LAW.includes(code)) ? "capacity" : null;
}

/** What is in hand at a temperature when the elements have filled for the service interval; null when a limit comes first. */
function inHandAtChange(system: System, temperature: number): number | null {
  const facts = factsOf(system);
  const horizon = system.service?.interval;
  if ("reasons" in facts || horizon === undefined) return null;
  const { end, moments } = followLife({ ...facts.given, horizon });
  const last = moments.at(-1);
  if (end || !last) return null;
  const restrictions = new Map(facts.given.elements.map(({ name }, at) => [name, last.restriction[at] ?? 1]));
  const filled = mapParts(system, (part) =>
    part.part === "filter" && restrictions.has(part.name)
      ? { ...part, restriction: Math.max(1, restrictions.get(part.name) ?? 1) }
      : part,
  );
  return check(filled, { temperatures: [temperature] }).points[0]?.inHand.low ?? null;
}
