import { readdirSync, readFileSync } from "node:fs";
import { type LoadingLawName, lawConstants } from "@thirstline/core";
import { type GaugeReading, readReadings } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { type GaugeOptions, gauge } from "@thirstline/study";
import {
  figureOfKey,
  gaugeChoice,
  gaugeFigures,
  gaugeWorking,
  leafAt,
  proofOf,
  type Step,
  stepsBefore,
} from "@thirstline/study/working";
import { expect, test } from "vitest";
import { gaugeJson } from "../../../packages/cli/src/json/gaugeJson.js";
import { gaugeLeaves } from "../../../packages/study/src/working/leaves/gaugeLeaves.js";
import { seeded } from "../../support/random.js";
import { heron, heronUnknown, historyOf, lawGrowth, type Trouble } from "../gauge/histories.js";
import { type AnswerLeaf, answerLeaves } from "./answerLeaves.js";
import { faultsOf } from "./faultsOf.js";
import { LONG, sampled } from "./sampled.js";
import { soiledReadings } from "./soiledReadings.js";
import { systemsIn } from "./systems.js";

const folder = new URL("../../../packages/spec/demo/readings/", import.meta.url);

/** Readings of a demonstration. */
function demo(file: string): readonly GaugeReading[] {
  const read = readReadings(readFileSync(new URL(file, folder)), { file });
  if ("faults" in read) throw new Error(`${file} cannot be read`);
  return read.readings;
}

/** Places of answers that were met, as the rows of the leaves name them. */
const met = new Set<string>();

/** Every fault of the workings of an answer as JSON, one figure of each kind. */
function faults(system: System, readings: readonly GaugeReading[], options: GaugeOptions = {}): string[] {
  const answer = gauge(system, readings, options);
  const json = gaugeJson(answer);
  const choice = gaugeChoice(system, readings, answer, options);
  const kindOf = ({ path: [list, at] }: AnswerLeaf): string =>
    list === "findings" || list === "cautions" || list === "reasons" || list === "sides"
      ? JSON.stringify([answer[list][Number(at)]].map((one) => one && ("code" in one ? one.code : one.side)))
      : "";
  for (const { path } of answerLeaves(json, 1000)) met.add(rowOf(path));
  const leaves = sampled(answerLeaves(json, LONG ? 3 : 1000), kindOf);
  return faultsOf(leaves, {
    leafOf: (path) => leafAt("gauge", json, path),
    workingOf: (leaf) => gaugeWorking(choice, leaf),
  });
}

/** The row of the leaves that a path belongs to. */
function rowOf(path: AnswerLeaf["path"]): string {
  const keys = path[2] === "trace" ? path.slice(0, -1) : path;
  return keys
    .map((step) => (typeof step === "number" ? "*" : step === "low" || step === "high" ? "middle" : step))
    .join(".");
}

for (const file of readdirSync(folder)) {
  test(`every figure of gauge has a working that comes out, units and all: ${file}`, { timeout: 600_000 }, () => {
    expect(faults(heron, demo(file))).toEqual([]);
  });
}

const troubles: readonly Trouble[] = [
  "none",
  "jump",
  "high when new",
  "air or slip",
  "air or slip later",
  "cold",
  "falls",
  "falls slowly",
];
const laws = Object.keys(lawConstants) as LoadingLawName[];

for (const [at, trouble] of troubles.entries()) {
  test(`every figure of gauge has a working that comes out: a history with "${trouble}"`, { timeout: 600_000 }, () => {
    for (let round = 0; round < (LONG ? 6 : 1); round++) {
      const random = seeded(900 + 100 * round + at);
      const law = laws[(at + round) % laws.length] as LoadingLawName;
      const growth = (limit: number) => lawGrowth(law, limit, random);
      const { readings } = historyOf({ random, growth, trouble, withFeed: round % 2 === 0, count: 18 });
      const system = trouble === "falls slowly" ? heronUnknown : heron;
      expect(faults(system, readings, round % 3 === 2 ? { gaugeError: 400, seed: 5 } : {})).toEqual([]);
    }
  });
}

test("every figure of gauge has a working that comes out: a reading that stands off", { timeout: 600_000 }, () => {
  for (const withFeed of [false, true]) {
    const random = seeded(7);
    const growth = (limit: number) => lawGrowth("intermediate", limit, random);
    const { readings } = historyOf({ random, growth, count: 24, gone: 0.7, withFeed });
    const off = readings.map((one, at) => {
      const { vacuum = 0, feedPressure } = one;
      if (at !== 11) return one;
      return feedPressure === undefined
        ? { ...one, vacuum: vacuum + 12e3 }
        : { ...one, feedPressure: feedPressure - 30e3 };
    });
    expect(gauge(heron, off).outliers).toHaveLength(1);
    expect(faults(heron, off)).toEqual([]);
  }
});

test("every figure of gauge has a working that comes out: what cannot be told yet", { timeout: 600_000 }, () => {
  const random = seeded(9);
  const growth = (limit: number) => lawGrowth("cake", limit, random);
  const { readings } = historyOf({ random, growth, count: 12, gone: 0.5 });
  const early = historyOf({ random, growth, count: 5, gone: 0.1 }).readings;
  const dated = readings.map(({ hours: _, ...rest }, at) => ({ ...rest, date: `2026-04-${10 + at}` }));
  const { duty: _, ...idle } = heron;
  const lot: [System, readonly GaugeReading[]][] = [
    [heron, []],
    [heron, readings.slice(0, 3)],
    [heron, early],
    [heronUnknown, readings.slice(5)],
    [heron, dated],
    [heronUnknown, dated],
    [idle, dated],
    [idle, readings],
    [heron, readings.map((one, at) => ({ ...one, changed: at === 4 }))],
  ];
  for (const [system, given] of lot) expect(faults(system, given)).toEqual([]);
});

for (const [at, { name, system }] of systemsIn("demo").entries()) {
  test(`every figure of gauge has a working that comes out, of readings noted barely or in full: ${name}`, {
    timeout: 600_000,
  }, () => {
    const random = seeded(name.length);
    const bare = soiledReadings(system, random, { count: 9, end: 3, bare: true });
    const full = soiledReadings(system, random, { count: 12, end: 2.5, feed: true });
    if (LONG || at % 2 === 0) expect(faults(system, bare)).toEqual([]);
    if (LONG || at % 2 === 1) expect(faults(system, full, { gaugeError: 300 })).toEqual([]);
  });
}

test("the answers above hold every figure that gauge can have", () => {
  expect(gaugeLeaves.map(([row]) => row).filter((row) => !met.has(row))).toEqual([]);
});

test("gaugeWorking(choice, leaf) leads a fitted figure back to the least sum of squares, and time left to draws and a limit", () => {
  const readings = demo("heron-loading.csv");
  const choice = gaugeChoice(heron, readings, gauge(heron, readings));
  const rests = (figure: string, of: string) => {
    const working = gaugeWorking(choice, { of, figure, asked: {} });
    expect(working && proofOf(working).misses).toEqual([]);
    const seen = new Set<Step>();
    const told = new Set<string>();
    const walk = (step: Step): void => {
      if (seen.has(step)) return;
      seen.add(step);
      told.add(step.origin.by === "formula" ? step.origin.formula.id : step.origin.by);
      for (const before of stepsBefore(step)) walk(before);
    };
    if (working) walk(working.step);
    return [...told];
  };
  expect(rests("demand over the file's", "suction")).toEqual(
    expect.arrayContaining(["search", "gauge-sum-of-squares", "gauge-normal-equation", "gauge-miss", "gauge-table"]),
  );
  expect(rests("running time left", "left")).toEqual(
    expect.arrayContaining(["gauge-time-quantile", "draws", "gauge-time-left", "gauge-ratio-at-limit", "file"]),
  );
});

test("what is no figure of readings has no working", () => {
  const readings = demo("heron-loading.csv");
  const choice = gaugeChoice(heron, readings, gauge(heron, readings));
  expect(gaugeWorking(choice, { of: "finding 9", figure: "size", asked: {} })).toBeNull();
  expect(gaugeWorking(choice, { of: "suction", figure: "colour", asked: {} })).toBeNull();
  expect(gaugeFigures(choice, "readings")).toEqual(["readings", "readings used"]);
  expect(choice.members.names).toEqual(["readings", "finding 0", "finding 1", "suction", "delivery", "left"]);
});

test("figureOfKey('gauge', key) tells the time left and where its limit is met", () => {
  const readings = demo("heron-loading.csv");
  const answer = gauge(heron, readings);
  const choice = gaugeChoice(heron, readings, answer);
  const toldOf = (key: string) => {
    const leaf = figureOfKey("gauge", key);
    return leaf && gaugeWorking(choice, leaf)?.step.value;
  };
  expect(toldOf("left")).toBeCloseTo(answer.left?.middle ?? 0, 6);
  expect(toldOf("temperature")).toBe(answer.left?.pointTemperature);
  // Both ends of an interval are no single figure.
  expect(figureOfKey("gauge", "ends")).toBeNull();
});
