import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { onePut, told } from "../../../../../tests/support/steps.js";
import { type Averaged, intervalOf } from "../../gauge/averaged.js";
import { proofOf } from "../proof.js";
import { type DrawnFigure, quantileStep } from "./drawSteps.js";

/** Three draws of one law that say 2, 5 and 3, the second of them half as likely as the others. */
function threeDraws(of: DrawnFigure["of"] = "ratio", law: "cake" | "none" = "cake", seed?: number) {
  const { soil } = oneGauge({
    readings: plainReadings(EVENLY.slice(0, 5)),
    laws: [law],
    options: seed === undefined ? {} : { seed },
  });
  const fitted = soil.soil.best;
  const draws = [2, 5, 3].map(
    (demand, at): Averaged => ({
      fitted,
      shape: fitted.model.shape,
      weight: at === 1 ? 1 : 2,
      parameters: [Math.log(demand) / 0.1, 0, 0],
      state: fitted.model.stateAt([Math.log(demand) / 0.1, 0, 0]),
    }),
  );
  const drawn: DrawnFigure = {
    draws,
    sceneOf: soil.sceneOf,
    figure: ({ state }) => state.demand,
    stepOf: (state) => state.demand,
    of,
  };
  return drawn;
}

test("quantileStep(drawn, which) goes straight between the draws on either side, worked out by hand", () => {
  const drawn = threeDraws();
  // Sorted: 2 (of weight 2), 3 (2), 5 (1); their middles lie at 1/5, 3/5 and 9/10 of the weight.
  const middle = quantileStep(drawn, "middle");
  expect(middle?.value).toBeCloseTo(2 + (0.5 - 0.2) / (0.6 - 0.2), 9);
  expect(["a", "b"].map((letter) => onePut(middle, letter).name)).toEqual([
    "resistance over clean by draw 1, of the cake law",
    "resistance over clean by draw 3, of the cake law",
  ]);
  const sorted = "draws sorted, their weights added up";
  expect(["q", "u", "v"].map((letter) => told(onePut(middle, letter)))).toEqual([
    ["share of the weight that lies below", 0.5, "1", "ratio", "half of the weight lies below"],
    ["share below the middle of the draw before", expect.closeTo(0.2, 12), "1", "ratio", sorted],
    ["share below the middle of the draw after", expect.closeTo(0.6, 12), "1", "ratio", sorted],
  ]);
  expect(middle && proofOf({ step: middle }).misses).toEqual([]);
});

test("quantileStep(drawn, 'low') below the middle of the least draw is that draw", () => {
  const low = quantileStep(threeDraws(), "low");
  expect([low?.name, low?.value]).toEqual(["resistance over clean by draw 1, of the cake law", expect.closeTo(2, 9)]);
});

test("quantileStep(drawn, 'high') beyond the middle of the largest draw is none", () => {
  expect(quantileStep(threeDraws(), "high")).toBeNull();
});

test("quantileStep(drawn, which) of draws that never end is none", () => {
  expect(quantileStep({ ...threeDraws(), figure: () => Number.POSITIVE_INFINITY }, "middle")).toBeNull();
});

test("quantileStep(drawn, 'low' and 'high') say what share lies beyond", () => {
  const { draws, ...rest } = threeDraws();
  const many = { ...rest, draws: Array.from({ length: 20 }, () => draws).flat() };
  const said = (which: "low" | "high") => {
    const q = onePut(quantileStep(many, which), "q");
    return [q.value, q.origin.by === "words" && q.origin.words];
  };
  expect(said("low")).toEqual([0.05, "one draw in twenty lies below"]);
  expect(said("high")).toEqual([0.95, "one draw in twenty lies above"]);
});

test("quantileStep(drawn, which) names times as times, and a law of no growth as none", () => {
  expect(onePut(quantileStep(threeDraws("time", "none"), "middle"), "b").name).toBe(
    "running time left by draw 3, of no growth",
  );
});

test("quantileStep(drawn, which) leads each draw back to what was fitted and how it was drawn", () => {
  const sayings = (law: "cake" | "none", seed?: number) => {
    const demand = onePut(quantileStep(threeDraws("ratio", law, seed), "middle"), "b");
    const parameter = onePut(demand, "d");
    expect(parameter.value).toBeCloseTo(Math.log(3) / 0.1, 12);
    expect([parameter.name, parameter.unit, parameter.kind]).toEqual([
      "demand off, in standard deviations",
      "1",
      "plain",
    ]);
    const { origin } = parameter;
    if (origin.by !== "draws") throw new Error("not drawn");
    expect(origin.from.map(({ name }) => name)).toEqual(origin.varying);
    return [origin.words, origin.varying];
  };
  const drawn = (first: string) =>
    `${first}: about what was fitted, by Student's distribution with 5 degrees of freedom and the fit's own covariance, ` +
    "every law that weighs 1 % or more drawn 160 times; each draw counts by its likelihood over how often it is drawn, " +
    "times the weight of its law";
  const file = ["demand off, in standard deviations", "zero off, in standard deviations"];
  expect(sayings("cake")).toEqual([drawn("draw 3 with seed 1, of the cake law"), [...file, "logarithm of the growth"]]);
  expect(sayings("none", 7)).toEqual([drawn("draw 3 with seed 7, of no growth"), file]);
});

test("quantileStep(drawn, which) comes to the interval that the answer has", () => {
  const { soil } = oneGauge({ readings: plainReadings(EVENLY.slice(0, 5)), laws: ["cake", "complete"] });
  const figure = ({ state }: Averaged) => state.ratioAt(2e5);
  const drawn: DrawnFigure = {
    draws: soil.soil.draws,
    sceneOf: soil.sceneOf,
    figure,
    stepOf: (state) =>
      state.ratioAt({ name: "t", value: 2e5, unit: "s", kind: null, origin: { by: "file", path: "" } }),
    of: "ratio",
  };
  const interval = intervalOf(drawn.draws, figure);
  for (const which of ["low", "middle", "high"] as const) {
    expect(quantileStep(drawn, which)?.value, which).toBeCloseTo(interval[which], 9);
  }
});
