import type { LifeEnd } from "@thirstline/core";
import type { LimitFacts, LimitMap, Met, MetAtDemand } from "../../gauge/LimitMap.js";
import * as formulas from "../formulas/gauge.js";
import { endSides } from "../life/endSides.js";
import type { Check, Step } from "../Step.js";
import { sceneOf } from "../scene/Scene.js";
import { demand } from "../supply/demand.js";
import { fromSource, inWords, searched, worked } from "../worked.js";
import type { GaugeGiven } from "./GaugeGiven.js";
import { number } from "./number.js";
import { toldWith } from "./toldWith.js";

/** Limits as they are met while elements fill. */
export interface LimitsGiven {
  readonly given: GaugeGiven;
  readonly map: LimitMap;
  readonly restrictions: LimitFacts["restrictions"];
}

/** Resistance over clean of the element that goes first at which the first limit is met, at a demand over the file's. */
export function metStep(limits: LimitsGiven, f: Step): Step | null {
  const [left, right] = limits.map.around(f.value);
  if (left.first.ratio === Infinity || right.first.ratio === Infinity) {
    const near = limits.map.at(f.value).ratio === right.first.ratio ? right : left;
    return near.first.ratio === Infinity ? null : nodeStep(limits, near);
  }
  return worked(formulas.ratioAtLimit, {
    r: nodeStep(limits, left),
    s: nodeStep(limits, right),
    f,
    a: tried(left),
    b: tried(right),
  });
}

/** Temperature of the duty point at which the first limit is met. */
export function metTemperature(limits: LimitsGiven, f: Step): Step {
  const [left, right] = limits.map.around(f.value);
  const met = limits.map.at(f.value);
  const near = f.value - left.demand < right.demand - f.value ? left : right;
  const shown = { name: "temperature", value: met.temperature, unit: "K", kind: "temperature" } as const;
  const own = nodeStep(limits, near);
  const checks = near.all.flatMap((one): Check[] => {
    if (one === near.first || one.ratio === Infinity) return [];
    const words = `no more soil is needed than for ${limitWords(one.by)} at ${celsius(one.temperature)}`;
    return [{ words, left: own, relation: "<=", right: boundStep(limits, near, one) }];
  });
  return searched("chosen from the temperatures of the duty: the least soil meets a limit there", shown, checks);
}

function tried({ demand: value }: MetAtDemand): Step {
  return fromSource("common practice, no source", number("demand at which limits are worked out", value));
}

const nodes = new WeakMap<Met, Step>();

function nodeStep(limits: LimitsGiven, at: MetAtDemand): Step {
  const known = nodes.get(at.first) ?? boundStep(limits, at, at.first);
  nodes.set(at.first, known);
  return known;
}

/** Where a limit is met at one demand, with what is on either side of it. */
function boundStep(limits: LimitsGiven, { demand: factor }: MetAtDemand, met: Met): Step {
  const name = `resistance over clean where ${limitWords(met.by)} is met at ${factor} times the demand, ${celsius(met.temperature)}`;
  const [low, high] = met.between;
  const side = (ratio: number, isHeld: boolean): Check[] => {
    const sides = sidesAt(limits, { factor, met, ratio });
    if (!sides) return [];
    const { left, right, holds } = sides;
    const broken = holds === "<=" ? ">=" : "<=";
    const words = `with ${Number(ratio.toPrecision(6))} times clean ${isHeld ? "it still holds" : "it holds no more"}`;
    return [{ words, left, relation: isHeld ? holds : broken, right }];
  };
  const checks = low === high ? side(low, false) : [...side(low, true), ...side(high, false)];
  const words =
    low === high
      ? "it does not hold with clean elements"
      : "closed in on by halving, seven times, between two resistances of the model's table; the middle of what is left";
  return searched(words, number(name, met.ratio), checks);
}

function sidesAt(
  { given, restrictions }: LimitsGiven,
  { factor, met, ratio }: { readonly factor: number; readonly met: Met; readonly ratio: number },
) {
  const { temperature, by } = met;
  const { system } = given;
  const full = demand(sceneOf(system, { temperature }));
  const Q = worked(formulas.timesDemand, {
    f: inWords("put in here", number("demand over the file's", factor)),
    Q: full,
  });
  const all = restrictions(ratio);
  const scene = sceneOf(system, {
    temperature,
    demand: Q.value,
    elements: "now",
    passage: "early",
    restrictions: all,
  });
  const T = inWords("of the duty", { name: "temperature", value: temperature, unit: "K", kind: "temperature" });
  const ratios = [...all].map(([name, value]) =>
    inWords(
      "as they have filled when the element that goes first is so far",
      number(`resistance over clean of ${name}`, value),
    ),
  );
  const told = (step: Step) => toldWith(step, { demand: Q, temperature: T, ratios });
  const sides = endSides(scene, by);
  return sides && { ...sides, left: told(sides.left), right: told(sides.right) };
}

function limitWords(by: LifeEnd): string {
  return by.kind === "limit" ? `the limit "${by.limit}"` : `the terminal drop of ${by.element}`;
}

function celsius(temperature: number): string {
  return `${Number((temperature - 273.15).toFixed(2))} °C`;
}
