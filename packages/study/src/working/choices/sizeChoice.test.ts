import type { CatalogueElement, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoElements } from "../../../../../tests/properties/choose/arrangements.js";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { check } from "../../check/check.js";
import type { Arrangement, SizeAnswer } from "../../choose/sizing/SizeAnswer.js";
import { proofOf } from "../proof.js";
import type { SizeAsked } from "./SizeGiven.js";
import { sizeChoice } from "./sizeChoice.js";
import { arrangementOwn, nearestOwn } from "./sizeFigures.js";

const HOUR = 3600;
const pickup = demoSystem("pickup-single");
const [first, second] = demoElements("elements.csv") as [CatalogueElement, CatalogueElement];
const stages = [
  { element: first.name, count: 2 },
  { element: second.name, count: 1 },
];

const answer = (more: object) =>
  ({
    side: "delivery",
    asked: { interval: 100 * HOUR, rating: null, code: null },
    temperatures: [268.15, 293.15],
    reasons: [],
    effort: {},
    arrangements: [
      { stages, bore: null },
      { stages: stages.slice(1), bore: 0.012 },
    ],
    failed: [],
    nearest: null,
    ...more,
  }) as unknown as SizeAnswer;
const choiceOf = (more: object = {}, options: SizeAsked = {}) =>
  sizeChoice(pickup, [first, second], answer(more), options);

test("sizeChoice(system, elements, answer) has the search, each arrangement in words, and what fails", () => {
  const { question, file, variants } = choiceOf({
    failed: [{ by: "rating", count: 7, example: { stages: stages.slice(0, 1), bore: null } }],
    nearest: { stages, bore: 0.01 },
  });
  expect([question, file]).toEqual(["size", pickup]);
  expect([...variants].map(([name, { change, asked }]) => [name, change, asked])).toEqual([
    ["search", null, {}],
    ["arrangement 0", `the arrangement of 2 × "${first.name}", then 1 × "${second.name}"`, { draws: 400, seed: 1 }],
    ["arrangement 1", `the arrangement of 1 × "${second.name}" with other lines`, { draws: 400, seed: 1 }],
    ["failed 0", null, {}],
    [
      "nearest",
      `the arrangement of 2 × "${first.name}", then 1 × "${second.name}" with other lines`,
      { draws: 400, seed: 1 },
    ],
  ]);
  expect(variants.get("failed 0")?.system).toBe(pickup);
  expect(figureLines(variants.get("failed 0")?.own ?? [])).toEqual([
    `The arrangement: elements of stage 1 = 2 | elements of stage 1 (plain, 1) | words "${first.name}": every count from one to 4 side by side is tried:  | 2`,
    "The arrangement: arrangements that fail by this = 7 | arrangements that fail by this (plain, 1) | words counted by the first thing each fails by:  | 7",
  ]);
  expect(variants.get("nearest")?.own.map(({ name }) => name)).toEqual([
    "elements of stage 1",
    "elements of stage 2",
    "bore of the lines",
    "arrangements that fail by this",
    "least in hand",
  ]);
  expect(figureLines(variants.get("nearest")?.own.slice(0, 4) ?? [])[2]).toBe(
    "The arrangement: bore of the lines = 0.01 | bore of the lines (bore, m) | asked bore | 0.01",
  );
});

test("sizeChoice(system, elements, answer, options) draws lives as they were drawn, and leaves nearest out where some pass", () => {
  const { variants } = choiceOf({}, { draws: 40, seed: 3, parallel: 2 });
  expect([...variants.keys()]).toEqual(["search", "arrangement 0", "arrangement 1"]);
  expect(variants.get("arrangement 0")?.asked).toEqual({ draws: 40, seed: 3 });
  expect(figureLines(variants.get("arrangement 0")?.own.slice(0, 1) ?? [])[0]).toMatch(
    "every count from one to 2 side by side",
  );
});

test.each<[asked: number | null, own: object | undefined, kept: number | undefined]>([
  // The pickup's own is 263 h.
  [100 * HOUR, pickup.service, 100 * HOUR],
  [263 * HOUR, pickup.service, 263 * HOUR],
  [null, pickup.service, 263 * HOUR],
  [100 * HOUR, undefined, 100 * HOUR],
  [null, undefined, undefined],
])("sizeChoice(system, elements, answer) keeps to the interval asked for, %s s", (interval, service, kept) => {
  const { service: _, ...bare } = pickup;
  const system = (service ? pickup : bare) as System;
  const own = answer({ asked: { interval, rating: null, code: null } });
  const put = sizeChoice(system, [first, second], own).variants.get("arrangement 0")?.system;
  expect(put?.service?.interval).toBe(kept);
  // What else the manual says stays.
  if (service) expect(put?.service).toEqual({ ...pickup.service, interval: kept });
  expect(put?.delivery?.some(({ part }) => part === "bank")).toBe(true);
});

const given = (options: SizeAsked = {}) => ({ file: pickup, elements: [first, second], answer: answer({}), options });
const asPut = { system: pickup, change: null, asked: { draws: 8, seed: 1 } };

function figure(name: string, one: object, options?: SizeAsked) {
  const made = arrangementOwn(given(options), asPut, { stages, bore: null, ...one } as unknown as Arrangement);
  const step = made.find((own) => own.name === name)?.make() ?? null;
  if (step) expect(proofOf({ step }).misses).toEqual([]);
  return step;
}

test("arrangementOwn(given, variant, arrangement) counts elements, changes and what is worst over the temperatures", () => {
  expect(figure("elements in all", {})?.value).toBe(3);
  // 450 h of duty a year at 100 h; 17 100 miles at 15 000 are fewer.
  expect(figure("elements changed in a year", {})?.value).toBeCloseTo(3 * 4.5, 9);
  const { points } = check(pickup, { temperatures: [268.15, 293.15] });
  expect(figure("most vacuum", {})?.value).toBeCloseTo(Math.max(...points.map(({ vacuum }) => vacuum?.middle ?? 0)), 6);
  expect(figure("least in hand", {})?.value).toBeCloseTo(Math.min(...points.map(({ inHand }) => inHand?.low ?? 0)), 9);
  const near = nearestOwn(given(), asPut, { stages, bore: null } as never).at(-1);
  expect(near?.make()?.value).toBe(figure("least in hand", {})?.value);
  const names = arrangementOwn(given(), asPut, { stages, bore: null } as unknown as Arrangement).map(
    ({ name, slow }) => [name, slow],
  );
  expect(names.slice(4)).toEqual(
    [
      "elements in all",
      "elements changed in a year",
      "cost of stoppages in a year",
      "cost of a year",
      "most vacuum",
      "least in hand",
    ].map((name) => [name, true]),
  );
});

test("arrangementOwn(given, variant, arrangement) has stoppages where lives were drawn and a stoppage costs something", () => {
  const name = "cost of stoppages in a year";
  const drawn = { spread: {} };
  const stoppages = figure(name, drawn, { stoppage: 2000 });
  // Each of 4.5 changes, at the chance of some draws of eight, a whole share of them.
  const share = (stoppages?.value ?? Number.NaN) / (4.5 * 2000);
  expect(share * 8).toBeCloseTo(Math.round(share * 8), 9);
  expect(share).toBeGreaterThan(0);
  expect(figure(name, {}, { stoppage: 2000 })).toBeNull();
  expect(figure(name, drawn)).toBeNull();
  const price = (one: CatalogueElement) => one.price ?? Number.NaN;
  const elements = 4.5 * (2 * price(first) + price(second));
  expect(figure("cost of a year", drawn)?.value).toBeCloseTo(elements, 9);
  expect(figure("cost of a year", drawn, { stoppage: 2000 })?.value).toBeCloseTo(elements + (stoppages?.value ?? 0), 9);
});

test("arrangementOwn(given, variant, arrangement) has nothing worst where no temperature is searched at", () => {
  const none = { ...given(), answer: answer({ temperatures: [] }) };
  const made = arrangementOwn(none, asPut, { stages, bore: null } as unknown as Arrangement);
  expect(
    made.filter(({ name }) => name === "most vacuum" || name === "least in hand").map(({ make }) => make()),
  ).toEqual([null, null]);
});
