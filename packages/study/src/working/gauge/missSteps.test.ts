import { expect, test } from "vitest";
import { EVENLY, METRE, oneGauge, plainReadings, troubled } from "../../../../../tests/support/gaugeScenes.js";
import { onePut, putIn, told } from "../../../../../tests/support/steps.js";
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

/** Several things the matter at once, each adding to what those before it left. */
const together: readonly (readonly Term[])[] = [
  [
    { kind: "outlier", at: 2 },
    { kind: "step", at: 4 },
    { kind: "cold", below: 288.15 },
  ],
  [
    { kind: "step", at: 3 },
    { kind: "thin", at: 5 },
  ],
];

test("readingMisses(fit) come to the misses that the fit left, of several things fitted together too", () => {
  for (const terms of together) {
    const { explained } = oneGauge({ ...troubled.cold(), terms, sizes: [2, 1.5, 0.4] });
    expect(readingMisses(explained).map(({ value }) => value)).toEqual(
      [...explained.fitted.fit.misses.subarray(0, EVENLY.length)].map((miss) => expect.closeTo(miss, 9)),
    );
  }
});

test("reckonedStep(state, at) adds resistance in words where a term has any, and leaves the law's alone elsewhere", () => {
  const { explained } = oneGauge(troubled.step());
  const r = (at: number) => onePut(reckonedStep(foundState(explained), at, "model"), "p", "r");
  expect(told(r(3)).at(-1)).toBe("gauge-ratio-between");
  expect(told(r(4)).at(-1)).toBe("gauge-ratio-with-more");
  expect(told(onePut(r(4), "e"))).toEqual([
    "what is fitted besides soil adds",
    explained.fitted.fit.parameters[3],
    "1",
    "plain",
    "by its size and place",
  ]);
  const off = oneGauge(troubled.outlier()).explained;
  const [, , added] = putIn(reckonedStep(foundState(off), 3, "model"), "p");
  expect(added && told(added)).toEqual([
    "what is fitted besides soil adds",
    expect.closeTo((off.fitted.fit.parameters[3] ?? 0) * (off.weighed.sigmas[3] ?? 0), 6),
    "Pa",
    "pressure",
    "by its size and place",
  ]);
});

test("missStep(state, at) tells the model's figures and how far the reading may be off, and goes no further", () => {
  const { explained } = oneGauge({ readings: plainReadings(EVENLY.slice(0, 4)) });
  const miss = missStep(foundState(explained), 2);
  expect(told(onePut(miss, "s"))).toEqual([
    "standard deviation of the reading",
    explained.weighed.sigmas[2],
    "Pa",
    "pressure",
    "gauge, demand and temperature together; the scatter of the last reading shows how",
  ]);
  expect(onePut(miss, "p", "p", "a").origin.by).toBe("words");
  expect(onePut(miss, "v").value).toBe(explained.instants[2]?.read);
});
