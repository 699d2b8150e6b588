import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainReadings, troubled } from "../../../../../tests/support/gaugeScenes.js";
import { putIn } from "../../../../../tests/support/steps.js";
import { proofOf } from "../proof.js";
import type { Check, Step } from "../Step.js";
import { FitScene } from "./FitScene.js";
import { fittedState, foundState } from "./fittedSteps.js";

const few = plainReadings(EVENLY.slice(0, 6));
const checksOf = ({ origin }: Step): readonly Check[] => (origin.by === "search" ? origin.checks : []);

test("foundState(fit) tells what is fitted as it was found, by its name", () => {
  const { explained } = oneGauge({ readings: few });
  expect(foundState(explained).parameter(2)).toEqual({
    name: "logarithm of the growth",
    value: explained.fitted.fit.parameters[2],
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "as found", from: [] },
  });
  expect(foundState(explained)).toBe(foundState(explained));
  expect(fittedState(explained)).not.toBe(foundState(explained));
});

test("fittedState(fit) proves what is fitted by its slope and by what more or less of it would cost", () => {
  const { explained } = oneGauge({ readings: few });
  const { fit } = explained.fitted;
  for (const place of [0, 1, 2]) {
    const step = fittedState(explained).parameter(place);
    const error = Math.sqrt(fit.covariance[place]?.[place] ?? 0).toPrecision(3);
    expect([step.name, step.value]).toEqual([explained.names[place], fit.parameters[place]]);
    expect(step.origin.by === "search" && step.origin.words).toBe(
      "searched together with all else that is fitted, by Levenberg and Marquardt's method, so that the squared misses of " +
        "all readings, each over its standard deviation, come to the least",
    );
    expect(checksOf(step).map(({ words, relation }) => [words, relation])).toEqual([
      ["the sum of squared misses has next to no slope here: moving it alone wins next to nothing", "<="],
      [`with more of it by one standard error, ${error}, the sum is no less`, "<="],
      [`with less of it by one standard error, ${error}, the sum is no less`, "<="],
    ]);
    expect(proofOf({ step }).misses).toEqual([]);
  }
});

test("fittedState(fit) compares the least sum with the sum a standard error away, which is one more", () => {
  const { explained } = oneGauge({ readings: few });
  const { fit } = explained.fitted;
  const least = fit.misses.reduce((sum, one) => sum + one * one, 0);
  for (const place of [0, 1, 2]) {
    const [, more, less] = checksOf(fittedState(explained).parameter(place));
    expect(more?.left.value).toBeCloseTo(least, 9);
    expect(less?.left).toBe(more?.left);
    // Of a model that is straight about the fit the sum grows by at least 1: more, where others would have to move along.
    for (const moved of [more, less]) expect((moved?.right.value ?? 0) - least).toBeGreaterThan(0.9);
    expect(more?.right).toMatchObject({
      name: "sum of squared misses there",
      unit: "1",
      origin: { by: "words", words: "every miss worked out anew", from: [] },
    });
  }
  // One standard error of the zero alone, by hand: every reading and the zero itself move.
  const [, more] = checksOf(fittedState(explained).parameter(1));
  const error = Math.sqrt(fit.covariance[1]?.[1] ?? 0);
  const { sigmas, zeroSpread } = explained.weighed;
  const moved = [...fit.misses].map((miss, at) => {
    if (at < sigmas.length) return miss + (error * zeroSpread) / (sigmas[at] ?? 0);
    return at === sigmas.length + 1 ? miss + error : miss;
  });
  expect(more?.right.value).toBeCloseTo(
    moved.reduce((sum, one) => sum + one * one, 0),
    6,
  );
});

test("fittedState(fit) works the slope out of every miss, those of the file and the zero too", () => {
  const { explained } = oneGauge({ readings: few });
  const [slope] = checksOf(fittedState(explained).parameter(1));
  if (!slope) throw new Error("no slope");
  const [misses, slopes] = [putIn(slope.left, "m"), putIn(slope.left, "q")];
  expect(misses.map(({ value }) => value)).toEqual(
    [...explained.fitted.fit.misses].map((miss) => expect.closeTo(miss, 9)),
  );
  const { sigmas, zeroSpread } = explained.weighed;
  // The zero moves every reading by the whole of its spread, and itself by 1.
  expect(slopes.map(({ value }) => value)).toEqual([
    ...[...sigmas].map((sigma) => expect.closeTo(zeroSpread / sigma, 6)),
    expect.closeTo(0, 6),
    expect.closeTo(1, 6),
  ]);
  expect(slopes[2]).toMatchObject({
    name: "slope of miss 3",
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "by a central difference", from: [] },
  });
  expect(slope.right).toEqual({
    name: "what a search of few moves may leave",
    value: 0.25,
    unit: "1",
    kind: "plain",
    origin: { by: "source", source: "common practice, no source" },
  });
});

/** The same fit with one of its figures at another place, and its own error of it. */
function movedTo(place: number, value: number, variance: number) {
  const { explained, given } = oneGauge({ readings: few });
  const { fitted } = explained;
  const parameters = fitted.fit.parameters.map((one, at) => (at === place ? value : one));
  const covariance = fitted.fit.covariance.map((row, at) => (at === place ? row.map(() => variance) : row));
  return new FitScene(given, {
    ...explained,
    facts: explained.facts,
    fitted: { ...fitted, fit: { ...fitted.fit, parameters, covariance } },
  });
}

test("fittedState(fit) of what lies at its bound has no slope, and is moved no further", () => {
  const words = (scene: FitScene, place: number) =>
    checksOf(fittedState(scene).parameter(place)).map(({ words: one }) => one.split(",")[0]);
  // The demand is held within six deviations.
  expect(words(movedTo(0, 6, 1), 0)).toEqual(["with less of it by one standard error"]);
  expect(words(movedTo(0, -6, 1), 0)).toEqual(["with more of it by one standard error"]);
  const slope = "the sum of squared misses has next to no slope here: moving it alone wins next to nothing";
  expect(words(movedTo(0, 5.5, 1), 0)).toEqual([slope, "with less of it by one standard error"]);
  expect(words(movedTo(0, 5, 1), 0)).toEqual([
    slope,
    "with more of it by one standard error",
    "with less of it by one standard error",
  ]);
  expect(words(movedTo(0, -5, 1), 0)).toHaveLength(3);
  expect(words(movedTo(0, 0, 0), 0)).toEqual([slope]);
});

test("fittedState(fit) proves what is found besides soil in the same way", () => {
  for (const kind of ["outlier", "cold"] as const) {
    const { explained } = oneGauge(troubled[kind]());
    const step = fittedState(explained).parameter(3);
    expect(step.value, kind).toBe(explained.fitted.fit.parameters[3]);
    expect(checksOf(step), kind).toHaveLength(3);
    expect(proofOf({ step }).misses, kind).toEqual([]);
  }
});

test("fittedState(fit) tells the sum with more of it from the sum with less, by hand away from where it is least", () => {
  const scene = movedTo(1, 1.5, 0.04);
  const { sigmas, zeroSpread } = scene.weighed;
  const { parameters } = scene.fitted.fit;
  const least = scene.fitted.fit.misses;
  // The zero alone is moved: every reading by the whole of its spread.
  const sumAt = (zero: number) => {
    const by = zero - (oneGauge({ readings: few }).explained.fitted.fit.parameters[1] ?? 0);
    const readings = [...sigmas].map((sigma, at) => (least[at] ?? 0) + (by * zeroSpread) / sigma);
    return [...readings, parameters[0] ?? 0, zero].reduce((sum, one) => sum + one * one, 0);
  };
  const checks = checksOf(fittedState(scene).parameter(1)).slice(1);
  expect(checks.map(({ words, right }) => [words, right.value])).toEqual([
    ["with more of it by one standard error, 0.200, the sum is no less", expect.closeTo(sumAt(1.7), 6)],
    ["with less of it by one standard error, 0.200, the sum is no less", expect.closeTo(sumAt(1.3), 6)],
  ]);
});
