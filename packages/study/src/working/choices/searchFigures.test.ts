import type { CatalogueElement, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import type { SizeAnswer } from "../../choose/sizing/SizeAnswer.js";
import { proofOf } from "../proof.js";
import type { SizeAsked } from "./SizeGiven.js";
import { searchFigures } from "./searchFigures.js";

const HOUR = 3600;
const elements = [1, 2, 3].map((at) => ({ name: `element ${at}` })) as unknown as CatalogueElement[];

/** As far as a search's own figures look at it. */
const file = {
  temperature: 280,
  duty: { seasons: [{ temperature: 270 }, { temperature: 283 }] },
  service: { interval: 100 * HOUR, atMost: 150 * HOUR },
} as unknown as System;

const answer = {
  verdict: "yes",
  asked: { interval: 100 * HOUR, rating: null, code: null },
  temperatures: [270, 270 + 13 / 3, 270 + 26 / 3, 280, 283],
  reasons: [],
  // Of 3 elements, up to 4 side by side, in one stage or two: 12 and 144.
  passing: 156 - 51 - 100,
  failed: [
    { by: "cleanliness", count: 51 },
    { by: "rating", count: 100 },
  ],
  effort: { spared: 1, bySums: 2, byModel: 3, orders: 4, lives: 5 },
} as unknown as SizeAnswer;

/** Every figure as a list tells it; what does not come out anew is a fault. */
function lines(options: SizeAsked, more: Partial<SizeAnswer> = {}, system = file) {
  const makers = searchFigures({ file: system, elements, answer: { ...answer, ...more }, options });
  for (const { make } of makers) {
    const step = make();
    if (step) expect(proofOf({ step }).misses).toEqual([]);
  }
  return figureLines(makers).map((line) => line.replace("The search: ", ""));
}

const between = "even-temperature: T_1 coldest; T_2 warmest; i place of the step; n how many steps";
const effort = [
  "arrangements ruled out with others = 1 | arrangements ruled out with others (plain, 1) | words counted in the search:  | 1",
  "arrangements judged by sums of drops = 2 | arrangements judged by sums of drops (plain, 1) | words counted in the search:  | 2",
  "arrangements judged by the whole model = 3 | arrangements judged by the whole model (plain, 1) | words counted in the search:  | 3",
  "orders of elements whose catch was reckoned = 4 | orders of elements whose catch was reckoned (plain, 1) | words counted in the search:  | 4",
  "lives followed to the end = 5 | lives followed to the end (plain, 1) | words counted in the search:  | 5",
];
const candidates =
  "arrangements: b how many bores; e elements in the catalogue; p most side by side; k[] how many stages";
const passing =
  "passing = 5 | passing (plain, 1) | arrangements-left: N arrangements; f[] fail by cleanliness, fail by rating";

test("searchFigures(given) tells what was asked, what there was to search, and what it came to", () => {
  expect(lines({})).toEqual([
    "interval asked = 360000 | interval asked (running time, s) | file service.interval | 360000",
    "longest interval allowed = 540000 | longest interval allowed (running time, s) | file service.at most | 540000",
    "temperature 1 searched at = 270 | temperature 1 searched at (temperature, K) | file duty.seasons[0].temperature | 270",
    `temperature 2 searched at = 274.333 | temperature 2 searched at (temperature, K) | ${between}`,
    `temperature 3 searched at = 278.667 | temperature 3 searched at (temperature, K) | ${between}`,
    "temperature 4 searched at = 280 | temperature 4 searched at (temperature, K) | file fuel.temperature | 280",
    "temperature 5 searched at = 283 | temperature 5 searched at (temperature, K) | file duty.seasons[1].temperature | 283",
    `candidates = 156 | candidates (plain, 1) | ${candidates}`,
    passing,
    ...effort,
  ]);
});

test("searchFigures(given) tells what was asked for in place of the file's", () => {
  const asked = { interval: 50 * HOUR, rating: { beta: 75, size: 4e-6 }, code: null };
  // The same bore twice is one bore: two of them, and 3 elements up to 2 side by side.
  const options = { temperatures: [270, 283], bores: [0.008, 0.01, 0.008], parallel: 2, stages: 1 };
  const more = { asked, temperatures: [270, 283], failed: [], passing: 12 };
  const { service: _, ...bare } = file;
  expect(lines(options, more, { ...bare, service: { interval: 100 * HOUR, source: "manual" } })).toEqual([
    "interval asked = 180000 | interval asked (running time, s) | asked interval | 180000",
    "longest interval allowed = 360000 | longest interval allowed (running time, s) | file service.interval | 360000",
    "beta asked = 75 | beta asked (plain, 1) | asked rating | 75",
    "size asked = 0.000004 | size asked (particle size, m) | asked rating | 0.000004",
    "temperature 1 searched at = 270 | temperature 1 searched at (temperature, K) | asked temperature | 270",
    "temperature 2 searched at = 283 | temperature 2 searched at (temperature, K) | asked temperature | 283",
    `candidates = 12 | candidates (plain, 1) | ${candidates}`,
    "passing = 12 | passing (plain, 1) | words all of them:  | 12",
    ...effort,
    "bore 1 tried = 0.008 | bore 1 tried (bore, m) | asked bore | 0.008",
    "bore 2 tried = 0.01 | bore 2 tried (bore, m) | asked bore | 0.01",
    "bore 3 tried = 0.008 | bore 3 tried (bore, m) | asked bore | 0.008",
  ]);
});

test("searchFigures(given) of a search that did not begin says at which temperature, and that nothing was searched", () => {
  const reasons = [{ code: "fuel not judged", temperature: 270 }, { code: "no interval" }] as const;
  const none = { verdict: "cannot say", reasons, passing: 0, failed: [], temperatures: [] } as const;
  const { service: _, ...bare } = file;
  expect(lines({ temperatures: [] }, { ...none, asked: { ...answer.asked, interval: null } }, bare)).toEqual([
    "temperature not judged = 270 | temperature not judged (temperature, K) | file duty.seasons[0].temperature | 270",
    `candidates = 156 | candidates (plain, 1) | ${candidates}`,
    "passing = 0 | passing (plain, 1) | words nothing is searched, for the reasons given:  | 0",
    ...effort,
  ]);
});

test("searchFigures(given) of a file without seasons takes its one temperature from its fuel", () => {
  const bare = { temperature: 280 } as unknown as System;
  expect(lines({}, { temperatures: [280], failed: [], passing: 156 }, bare)[1]).toBe(
    "temperature 1 searched at = 280 | temperature 1 searched at (temperature, K) | file fuel.temperature | 280",
  );
});

test("searchFigures(given) tells how a temperature between two was come to, and how many arrangements there are", () => {
  const makers = searchFigures({ file, elements, answer, options: {} });
  const steps = ["temperature 3 searched at", "passing"].map((name) => makers.find((one) => one.name === name)?.make());
  expect(stepLines(steps.flatMap((step) => step ?? []))).toEqual([
    `temperature 3 searched at (temperature, K) | ${between}`,
    "coldest (temperature, K) | words of those stated or asked for:  | 270",
    "warmest (temperature, K) | words of those stated or asked for:  | 283",
    "place of the step (plain, 1) | words counted:  | 2",
    "how many steps (plain, 1) | words so many that none is longer than 5 K:  | 3",
    passing.slice("passing = 5 | ".length),
    `arrangements (plain, 1) | ${candidates}`,
    "how many bores (plain, 1) | words counted; the file's own is one:  | 1",
    "elements in the catalogue (plain, 1) | words counted:  | 3",
    "most side by side (plain, 1) | source as asked, or four | 4",
    "how many stages (plain, 1) | words counted:  | 1",
    "fail by cleanliness (plain, 1) | words counted by the first thing each fails by:  | 51",
    "fail by rating (plain, 1) | words counted by the first thing each fails by:  | 100",
  ]);
});
