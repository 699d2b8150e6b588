import { expect, test } from "vitest";
import { EVENLY, METRE, oneGauge, plainReadings, troubled } from "../../../../../tests/support/gaugeScenes.js";
import type { Term } from "../../gauge/Term.js";
import { fittedState, foundState, readingMisses } from "./fittedSteps.js";
import { missStep, reckonedStep } from "./missSteps.js";

test("readingMisses(fit) come to the misses that the fit itself left, whatever is fitted besides soil", () => {
  for (const kind of ["outlier", "step", "thin", "cold", "fall"] as const) {
    const { explained } = oneGauge(troubled[kind]());
    const left = [...explained.fitted.fit.misses.subarray(0, EVENLY.length)];
    expect(
      readingMisses(explained).map(({ value }) => value),
      kind,
    ).toEqual(left.map((miss) => expect.closeTo(miss, 9)));
  }
});

test("reckonedStep(state, at) is the pressure read and what it is missed by", () => {
  for (const kind of ["outlier", "step", "thin", "cold", "fall"] as const) {
    const { explained, given } = oneGauge(troubled[kind]());
    for (const at of [1, 3, 4, 7]) {
      const off = (explained.fitted.fit.misses[at] ?? 0) * (explained.weighed.sigmas[at] ?? 0);
      const read = (given.readings[at]?.vacuum ?? 0) + off;
      expect(reckonedStep(fittedState(explained), at, "whole").value, `${kind} ${at}`).toBeCloseTo(read, 5);
    }
  }
});

test("reckonedStep(state, at) is worked out by hand where there is nothing but soil: the metre, and so many clean drops", () => {
  const { explained } = oneGauge({ readings: plainReadings(EVENLY) });
  const { demand, zero, ratioAt } = explained.fitted.model.stateAt(explained.fitted.fit.parameters);
  const time = 50 * 3600;
  const byHand = METRE + 1000 * demand * ratioAt(time) + zero;
  expect(reckonedStep(fittedState(explained), 5, "whole").value).toBeCloseTo(byHand, 4);
});

test("reckonedStep(state, at) says what is fitted besides soil where it adds anything, and nothing of it elsewhere", () => {
  const toldAt = (kind: Term["kind"], at: number) => {
    const { origin } = reckonedStep(foundState(oneGauge(troubled[kind]()).explained), at, "model");
    const put = origin.by === "formula" ? origin.inputs.flatMap(({ steps }) => steps) : [];
    return put.map(({ name, origin: own }) =>
      own.by === "formula"
        ? own.inputs.flatMap(({ letter, steps }) => (letter === "r" ? steps.map((one) => one.name) : []))
        : [name, own.by === "words" ? own.words : ""],
    );
  };
  const r = "resistance over clean";
  expect(toldAt("step", 3)).toEqual([[r], []]);
  expect(toldAt("step", 4)).toEqual([[r], []]);
  expect(toldAt("outlier", 2)).toEqual([[r], []]);
  expect(toldAt("outlier", 3)).toEqual([[r], [], ["what is fitted besides soil adds", "by its size and place"]]);
});

test("missStep(state, at) is named by the row of its reading", () => {
  const { explained } = oneGauge({ readings: plainReadings(EVENLY, (at) => ({ row: at + 11 })) });
  expect(missStep(foundState(explained), 2).name).toBe("miss of reading 13");
});
