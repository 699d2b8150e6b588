import type { Arrangement, NearestMiss } from "../../choose/sizing/SizeAnswer.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import * as formulas from "../formulas/choosing.js";
import { leastInHand } from "../formulas/limits.js";
import { mostVacuum } from "../formulas/most.js";
import { stoppagesAYear } from "../formulas/yearCost.js";
import type { Step } from "../Step.js";
import { asked, inWords, worked } from "../worked.js";
import { arrangementCost, setsAYear } from "./arrangementCost.js";
import type { Variant } from "./Choice.js";
import { figureStep } from "./leastInHand.js";
import { stoppageCost } from "./prices.js";
import type { SizeGiven } from "./SizeGiven.js";

const GROUP = "The arrangement";
type Layout = Pick<Arrangement, "stages" | "bore">;

/** How an arrangement is made up, and how many fail with it. */
export function stageFigures({ options }: SizeGiven, { stages, bore }: Layout, fail?: number): FigureMaker[] {
  const most = options.parallel ?? 4;
  const counted = stages.map(({ count, element }, at): FigureMaker => {
    const plain = { name: `elements of stage ${at + 1}`, value: count, unit: "1", kind: "plain" } as const;
    return {
      group: GROUP,
      name: plain.name,
      make: () => inWords(`"${element}": every count from one to ${most} side by side is tried`, plain),
    };
  });
  const width = { name: "bore of the lines", value: bore ?? Number.NaN, unit: "m", kind: "bore" } as const;
  const fails = {
    name: "arrangements that fail by this",
    value: fail ?? Number.NaN,
    unit: "1",
    kind: "plain",
  } as const;
  return [
    ...counted,
    { group: GROUP, name: width.name, make: () => (bore === null ? null : asked("bore", width)) },
    {
      group: GROUP,
      name: fails.name,
      make: () => (fail === undefined ? null : inWords("counted by the first thing each fails by", fails)),
    },
  ];
}

/** Figures of an arrangement beside those of `check` and `life` with it put in. */
export function arrangementOwn(given: SizeGiven, variant: Omit<Variant, "own">, one: Arrangement): FigureMaker[] {
  const figure = (name: string, make: () => Step | null): FigureMaker => ({ group: GROUP, name, make, slow: true });
  const count = () => worked(formulas.elementsInAll, { n: stageSteps(given, one) });
  const stoppages = (): Step | null => {
    const s = one.spread && stoppageCost(given.options);
    const P = s && figureStep(variant.system, "chance of an end before the service interval", variant.asked);
    return s && P ? worked(stoppagesAYear, { c: setsAYear(given), P, s }) : null;
  };
  return [
    ...stageFigures(given, one),
    figure("elements in all", count),
    figure("elements changed in a year", () => worked(formulas.elementsChanged, { n: count(), c: setsAYear(given) })),
    figure("cost of stoppages in a year", stoppages),
    figure("cost of a year", () => arrangementCost(given, one, { n: stageSteps(given, one), stoppages: stoppages() })),
    figure("most vacuum", () => {
      const V = given.answer.temperatures.flatMap(
        (temperature) => figureStep(variant.system, "vacuum", { temperature }) ?? [],
      );
      return V.length === 0 ? null : worked(mostVacuum, { V });
    }),
    leastFigure(given, variant),
  ];
}

/** Figures of what came nearest, beside those of `check` and `life` with it put in. */
export function nearestOwn(given: SizeGiven, variant: Omit<Variant, "own">, one: NearestMiss): FigureMaker[] {
  return [...stageFigures(given, one), leastFigure(given, variant)];
}

/** What is in hand at the temperature, of those searched at, that leaves least. */
function leastFigure({ answer }: SizeGiven, { system }: Omit<Variant, "own">): FigureMaker {
  const name = "least in hand";
  const make = (): Step | null => {
    const i = answer.temperatures.flatMap(
      (temperature) => figureStep(system, "in hand, low end", { temperature }) ?? [],
    );
    return i.length === 0 ? null : worked(leastInHand, { i }, { name });
  };
  return { group: GROUP, name, make, slow: true };
}

function stageSteps(given: SizeGiven, one: Arrangement): Step[] {
  return stageFigures(given, one)
    .slice(0, one.stages.length)
    .flatMap(({ make }) => make() ?? []);
}
