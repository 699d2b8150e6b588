import type { System } from "@thirstline/spec/system";
import { applyRemedy } from "../../choose/applyRemedy.js";
import type { RemedyAnswer, RemedyResult } from "../../choose/RemedyAnswer.js";
import type { RemedyOptions } from "../../choose/remedy.js";
import { temperaturesOf } from "../../choose/temperaturesOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import * as formulas from "../formulas/choosing.js";
import type { Step } from "../Step.js";
import { asked, inWords, worked } from "../worked.js";
import type { Choice, Variant } from "./Choice.js";
import { figureStep, leastInHandAt } from "./leastInHand.js";
import { mapSteps } from "./mapSteps.js";
import { remedyParts } from "./remedyParts.js";

const GROUP = "What it buys";

/**
 * What an answer to `remedy` compares: "now", and every change by its place in the answer, "single 0", "pairs 2". Their
 * figures are `check`'s of the system so changed.
 *
 * @param options as the answer was asked with
 */
export function remedyChoice(system: System, answer: RemedyAnswer, options: RemedyOptions = {}): Choice {
  const variantOf = (result: RemedyResult): Variant => {
    const changed = result.changes.reduce(applyRemedy, system);
    const change = result.changes.length === 0 ? null : result.changes.map(({ kind }) => kind).join(", ");
    return {
      system: changed,
      change: change && `as changed: ${change}`,
      asked: { temperature: result.temperature },
      own: ownFigures({ system, changed, result, now: answer.now, options }),
    };
  };
  const listed = (name: string, results: readonly RemedyResult[]) =>
    results.map((one, at): [string, Variant] => [`${name} ${at}`, variantOf(one)]);
  return {
    question: "remedy",
    file: system,
    variants: new Map<string, Variant>([
      ["now", variantOf(answer.now)],
      ...listed("single", answer.single),
      ...listed("pairs", answer.pairs),
    ]),
  };
}

interface Given {
  readonly system: System;
  readonly changed: System;
  readonly result: RemedyResult;
  readonly now: RemedyResult;
  readonly options: RemedyOptions;
}

function ownFigures(given: Given): FigureMaker[] {
  const { system, changed, result, now, options } = given;
  const figure = (name: string, make: () => Step | null): FigureMaker => ({ group: GROUP, name, make, slow: true });
  const warmer = result.changes.reduce((sum, one) => sum + (one.kind === "warmer fuel" ? one.by : 0), 0);
  const cooler = result.changes.reduce((sum, one) => sum + (one.kind === "cooler fuel" ? one.by : 0), 0);
  const temperatures = (options.temperatures ?? temperaturesOf(system)).map((one) => one + (warmer - cooler));
  return [
    figure("temperature where least is in hand", () => leastInHandAt(changed, result.temperature, temperatures)),
    figure("vacuum over the clean limit", () => overClean(changed, result, temperatures)),
    figure("ceiling gained", () => {
      const Q_2 = figureStep(changed, "ceiling at change, low end", { temperature: result.temperature });
      const Q_1 = figureStep(system, "ceiling at change, low end", { temperature: now.temperature });
      return Q_1 && Q_2 && Q_1.value > 0 ? worked(formulas.ceilingGained, { Q_2, Q_1: asFiled(Q_1) }) : null;
    }),
    figure("cost", () => cost(result, options)),
    ...result.changes.flatMap((one, at) =>
      remedyParts(system, one).map(({ key, step }) => figure(`change ${at + 1}, ${key}`, step)),
    ),
  ];
}

/** Steps of the system as it is, without their parts: their places are not to be told anew as those of the changed one. */
function asFiled(step: Step): Step {
  return mapSteps(step, ({ part: _, ...rest }) => rest);
}

function overClean(system: System, { overClean: value }: RemedyResult, temperatures: readonly number[]): Step | null {
  if (value === null) return null;
  const V = temperatures.flatMap((temperature) => figureStep(system, "vacuum, high end", { temperature }) ?? []);
  const V_l = figureStep(system, "clean limit");
  return V_l && V.length > 0 ? worked(formulas.overClean, { V, V_l }, { value }) : null;
}

function cost({ changes, cost: value }: RemedyResult, { costs = {} }: RemedyOptions): Step | null {
  if (value === null) return null;
  const money = { unit: "stated currency", kind: null } as const;
  if (changes.length === 0) return inWords("nothing is changed", { name: "cost", value, unit: money.unit });
  const c = changes.map(({ kind }) =>
    asked("cost", { name: `cost of ${kind}`, value: costs[kind] ?? Number.NaN, unit: money.unit }),
  );
  return worked(formulas.changesCost, { c }, { value });
}
