import type { GaugeReading } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import {
  EVENLY,
  type OneGauge,
  oneGauge,
  plainBothSides,
  plainReadings,
  troubled,
} from "../../../../../tests/support/gaugeScenes.js";
import { onePut, putIn, stepsIn, told } from "../../../../../tests/support/steps.js";
import type { Step } from "../Step.js";
import { countStep, gaugeErrorStep, priorWeight, scaleStep, sigmaStep } from "./scatterSteps.js";

/** A reading without some of what is noted. */
function less(reading: GaugeReading, ...keys: (keyof GaugeReading)[]): GaugeReading {
  return Object.fromEntries(
    Object.entries(reading).filter(([key]) => !keys.includes(key as keyof GaugeReading)),
  ) as never;
}

/** Feed pressures of the pump that holds 80 kPa, with the vacuum or without. */
const feeds = (withVacuum: boolean): OneGauge => ({
  system: plainBothSides,
  side: "delivery",
  readings: plainReadings(EVENLY, (at) => ({ feedPressure: 60e3 - 900 * at + 200 * (at % 3) })).map((one) =>
    withVacuum ? one : less(one, "vacuum"),
  ),
});

const cases: Readonly<Record<string, () => OneGauge>> = {
  "all noted": () => ({ readings: plainReadings(EVENLY) }),
  "a load not noted": () => ({ readings: plainReadings(EVENLY).map((one) => less(one, "load")) }),
  "a flow noted": () => ({
    readings: plainReadings(EVENLY, () => ({ flow: 5e-5 })).map((one) => less(one, "load")),
  }),
  "a temperature not noted": () => ({ readings: plainReadings(EVENLY).map((one) => less(one, "temperature")) }),
  "one reading far off": () => troubled.outlier(),
  "nothing known of a change": () => ({ readings: plainReadings(EVENLY, () => ({ changed: false })) }),
  "a stated error": () => ({ readings: plainReadings(EVENLY), options: { gaugeError: 200 } }),
  "a feed pressure": () => feeds(false),
  "a feed pressure and a vacuum": () => feeds(true),
  "one reading": () => ({ readings: plainReadings([1.3]), laws: ["none"] }),
};

test("sigmaStep(fit, at) comes to how far the fit took each reading to be off", () => {
  for (const [name, of] of Object.entries(cases)) {
    const { explained } = oneGauge(of());
    for (const at of [0, explained.instants.length - 1]) {
      const sigma = explained.weighed.sigmas[at] ?? 0;
      expect(sigmaStep(explained, at).value / sigma, `${name}, ${at}`).toBeCloseTo(1, 9);
    }
  }
});

/** Without unit and kind. */
const said = (step: Step) => {
  const [name, value, , , from] = told(step);
  return [name, value, from];
};

test("sigmaStep(fit, at) tells an error of the demand that is noted from one that nobody noted", () => {
  const of = (name: string) => {
    const { explained } = oneGauge((cases[name] as () => OneGauge)());
    return putIn(sigmaStep(explained, 1), "n").map(said);
  };
  const practice = "common practice, no source";
  expect(of("all noted")).toEqual([["error of a demand that is noted", 0.05, practice]]);
  expect(of("a flow noted")).toEqual([["error of a demand that is noted", 0.05, practice]]);
  expect(of("a load not noted")).toEqual([["error of a demand that nobody noted", 0.15, practice]]);
});

test("sigmaStep(fit, at) tells how far the temperature may be off, as noted or as the file states it", () => {
  const of = (name: string) => {
    const { explained } = oneGauge((cases[name] as () => OneGauge)());
    const [u] = putIn(sigmaStep(explained, 1), "u");
    const temperature = (letter: string) =>
      stepsIn(onePut(u, letter)).find(({ kind, origin }) => kind === "temperature" && origin.by === "words");
    return ["a", "b"].map((letter) => said(temperature(letter) as Step));
  };
  expect(of("all noted")).toEqual([
    ["temperature", 290.15, "as noted, and 2 K more, by which it may be off: common practice, no source"],
    ["temperature", 288.15, "as noted"],
  ]);
  expect(of("a temperature not noted")).toEqual([
    ["temperature", 294.15, "as the file states it, and 6 K more, by which it may be off: common practice, no source"],
    ["temperature", 288.15, "as the file states it"],
  ]);
});

test("gaugeErrorStep(fit) is what is usual, or what is asked", () => {
  const of = (options: OneGauge["options"] = {}) =>
    gaugeErrorStep(oneGauge({ readings: plainReadings(EVENLY), options }).explained);
  const plain = { name: "error of the gauge", unit: "Pa", kind: "pressure" };
  expect(of()).toEqual({ ...plain, value: 500, origin: { by: "source", source: "common practice, no source" } });
  expect(of({ gaugeError: 200 })).toEqual({ ...plain, value: 200, origin: { by: "asked", option: "gauge error" } });
});

test("sigmaStep(fit, at) of a feed pressure counts two gauges where the vacuum is read too", () => {
  const of = (withVacuum: boolean) => putIn(sigmaStep(oneGauge(feeds(withVacuum)).explained, 2), "g")[0]?.value;
  expect(of(false)).toBe(500);
  expect(of(true)).toBeCloseTo(500 * Math.SQRT2, 9);
});

test("scaleStep(fit) goes over two rounds from the usual scatter, and holds a miss that is far off", () => {
  const { explained } = oneGauge(troubled.outlier());
  const second = scaleStep(explained);
  const [first] = putIn(second, "b");
  if (!first) throw new Error("no round before");
  expect(second.value).toBeCloseTo(Math.sqrt(4 / explained.weighed.prior.sum), 9);
  expect(putIn(first, "b").map(said)).toEqual([
    ["scatter over the usual one", 1, "the usual scatter, in the first round"],
  ]);
  const held = putIn(second, "h");
  expect(held.map(({ name }) => name)).toEqual(EVENLY.map((_, at) => `miss of reading ${at + 1}, held`));
  expect(putIn(first, "h")[3]?.value).toBe(2.5);
  expect(putIn(held[3] as Step, "k").map(said)).toEqual([
    ["most that one reading counts", 2.5, "common practice, no source"],
  ]);
  const [miss] = putIn(held[0] as Step, "m");
  expect(miss && said(miss)).toEqual([
    "miss of reading 1",
    expect.any(Number),
    expect.stringMatching(
      /^what was reckoned less what was read, over the standard deviation it had in that round, by (no growth|the \w+ law)$/,
    ),
  ]);
  const [free] = putIn(second, "f");
  expect(free && putIn(free, "n").map(said)).toEqual([["readings", 8, "counted"]]);
  expect(free && putIn(free, "k").map(said)).toEqual([["constants of the growth", expect.any(Number), "counted"]]);
});

test("scaleStep(fit) says which law of growth a round was reckoned by, or none", () => {
  const wordsOf = (kilopascals: readonly number[]) => {
    const { explained } = oneGauge({ readings: plainReadings(kilopascals) });
    const [held] = putIn(scaleStep(explained), "h");
    const [miss] = held ? putIn(held, "m") : [];
    return miss?.origin.by === "words" ? miss.origin.words.split(", by ")[1] : undefined;
  };
  expect(wordsOf([1, 1.02, 0.98, 1, 1.01, 0.99])).toBe("no growth");
  expect(wordsOf(EVENLY)).toBe("the cake law");
});

test("priorWeight(fit) and countStep(fit) say what is known beforehand, and how many readings there are", () => {
  const { explained } = oneGauge({ readings: plainReadings(EVENLY) });
  expect(said(priorWeight(explained))).toEqual([
    "readings that the usual scatter counts as",
    4,
    "common practice, no source",
  ]);
  expect(said(countStep(explained))).toEqual(["readings", 8, "counted"]);
  const stated = oneGauge({ readings: plainReadings(EVENLY), options: { gaugeError: 200 } }).explained;
  expect(said(priorWeight(stated))).toEqual([
    "readings that a stated error counts as",
    12,
    "common practice, no source",
  ]);
});

test("sigmaStep(fit, at) is named by its reading, and says how fast what is read grows with the demand", () => {
  const { explained } = oneGauge({ readings: plainReadings(EVENLY, (at) => ({ row: at + 31 })) });
  const sigma = sigmaStep(explained, 1);
  expect(sigma.name).toBe("standard deviation of reading 32");
  const practice = ["common practice, no source"];
  expect(told(onePut(sigma, "n")).slice(2)).toEqual(["1", "ratio", ...practice]);
  const slope = onePut(sigma, "P");
  const beside = ["1", "plain", "a little beside the noted one"];
  expect([onePut(slope, "a", "w", "f"), onePut(slope, "b", "w", "f"), onePut(slope, "s")].map(told)).toEqual([
    ["demand over the noted one", 1.05, ...beside],
    ["demand over the noted one", 0.95, ...beside],
    ["difference of the demands", 0.1, "1", "plain", "the one less the other"],
  ]);
  // Worked out from the file, not told as the model's.
  expect(onePut(slope, "a", "a").origin.by).not.toBe("words");
  const temperature = stepsIn(onePut(sigma, "u", "b")).find(({ name }) => name === "temperature");
  expect(temperature && told(temperature)).toEqual(["temperature", 288.15, "K", "temperature", "as noted"]);
});
