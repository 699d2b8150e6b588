import { type Averaged, LEAST } from "../../gauge/averaged.js";
import { type Counted, neighboursOf, type Ranked } from "../../gauge/quantileOf.js";
import { ratioQuantile, timeQuantile } from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { inWords, renamed, worked } from "../worked.js";
import type { FitScene } from "./FitScene.js";
import { foundState } from "./fittedSteps.js";
import { StateSteps } from "./StateSteps.js";

/** Shares of the weight that the ends and the middle of an interval stay above. */
export const SHARES = { low: 0.05, middle: 0.5, high: 0.95 } as const;

const WORDS = {
  low: "one draw in twenty lies below",
  middle: "half of the weight lies below",
  high: "one draw in twenty lies above",
} as const;

/** One figure of many draws. */
export interface DrawnFigure {
  readonly draws: readonly Averaged[];
  readonly sceneOf: (fitted: Averaged["fitted"]) => FitScene;
  readonly figure: (draw: Averaged) => number;
  readonly stepOf: (state: StateSteps) => Step;
  readonly of: "ratio" | "time";
}

const formulas = { ratio: ratioQuantile, time: timeQuantile } as const;

/** What a share of the draws' weight stays below: straight between the two draws on either side, each worked out. */
export function quantileStep(drawn: DrawnFigure, which: keyof typeof SHARES): Step | null {
  const { draws, figure, of } = drawn;
  const values = draws.map((draw): Counted => ({ value: figure(draw), weight: draw.weight }));
  const { before, after } = neighboursOf(values, SHARES[which]);
  if (after === null || !Number.isFinite(after.value)) return null;
  const b = drawnStep(drawn, after);
  // Below the middle of the least draw there is nothing to go between.
  if (before === null) return b;
  const part = (words: string, name: string, value: number) =>
    inWords(words, { name, value, unit: "1", kind: "ratio" });
  return worked<"a" | "b" | "q" | "u" | "v">(formulas[of], {
    a: drawnStep(drawn, before),
    b,
    q: part(WORDS[which], "share of the weight that lies below", SHARES[which]),
    u: part("draws sorted, their weights added up", "share below the middle of the draw before", before.at),
    v: part("draws sorted, their weights added up", "share below the middle of the draw after", after.at),
  });
}

function drawnStep({ draws, sceneOf, stepOf, of }: DrawnFigure, { place }: Ranked): Step {
  const draw = draws[place] as Averaged;
  const fit = sceneOf(draw.fitted);
  const { law } = fit.fitted.model.shape;
  const what = of === "time" ? "running time left" : "resistance over clean";
  const name = `${what} by draw ${place + 1}, of ${law === "none" ? "no growth" : `the ${law} law`}`;
  return fit.step(`drawn ${of} ${place}`, () => renamed(stepOf(drawnState(fit, draw, place)), name));
}

function drawnState(fit: FitScene, draw: Averaged, place: number): StateSteps {
  const seed = fit.given.options.seed ?? 1;
  const law = fit.fitted.model.shape.law;
  return fit.kept(`drawn state ${place}`, () => {
    const from = fit.names.map((_, at) => foundState(fit).parameter(at));
    return new StateSteps(fit, (at) => ({
      name: fit.names[at] ?? "",
      value: draw.parameters[at] ?? Number.NaN,
      unit: "1",
      kind: "plain",
      origin: {
        by: "draws",
        words:
          `draw ${place + 1} with seed ${seed}, of ${law === "none" ? "no growth" : `the ${law} law`}: about what was fitted, by ` +
          "Student's distribution with 5 degrees of freedom and the fit's own covariance, every law that weighs " +
          `${LEAST * 100} % or more drawn 160 times; each draw counts by its likelihood over how often it is drawn, times the ` +
          "weight of its law",
        varying: fit.names,
        from,
      },
    }));
  });
}
