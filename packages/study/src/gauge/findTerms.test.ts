import { expect, test } from "vitest";
import { instantsOf, newRun, proportional } from "../../../../tests/support/gaugeRuns.js";
import { findTerms } from "./findTerms.js";
import type { Run } from "./Instant.js";
import type { GaugeSide } from "./instantsOf.js";
import { flat } from "./shapes.js";
import { weigh } from "./weigh.js";

const wobble = [60, -90, 30, -30, 90, -60, 45, -75, 15, -15];
const scattered = (of: (at: number) => number, count = 8) =>
  Array.from({ length: count }, (_, at) => of(at) + (wobble[at % 10] as number));
const found = (run: Run, side: GaugeSide = "suction", weight = 12) => findTerms(weigh(run, 100, weight), side);
const runOf = (
  of: (at: number) => number,
  { count = 8, known = true, temperature = (_at: number): number => 288 } = {},
): Run => {
  const instants = instantsOf(scattered(of, count), (at) => ({ temperature: temperature(at) }), proportional);
  return known ? newRun(instants) : { instants, start: { known: false } };
};

const cold = (at: number): number => (at % 2 === 0 ? 288 : 268);

test.each([
  ["nothing in level readings of clean elements", runOf(() => 1000), []],
  ["nothing in even growth", runOf((at) => 1000 + 400 * at), []],
  ["a step up", runOf((at) => (at < 4 ? 1000 : 3500)), [{ kind: "step", at: 4 }]],
  ["too much from new on", runOf(() => 4000), [{ kind: "step", at: 0 }]],
  ["a reading that stands off", runOf((at) => 1000 + 300 * at + (at === 4 ? 3000 : 0)), [{ kind: "outlier", at: 4 }]],
  ["cold", runOf((at) => (at % 2 === 0 ? 1000 : 2500), { temperature: cold }), [{ kind: "cold", below: 288 }]],
  ["a fall", runOf((at) => 5000 - 500 * at, { known: false }), [{ kind: "fall" }]],
] as const)("findTerms(weighed, side) finds %s", (_, run, terms) => {
  expect(found(run).terms).toEqual(terms);
});

test("findTerms(weighed, side) keeps the fits of soil alone, and those with what was found, the best first", () => {
  const { soil, fits, terms } = found(runOf((at) => (at < 4 ? 1000 : 3500)));
  for (const list of [soil, fits]) {
    expect(list.length).toBeGreaterThan(2);
    expect(list.map(({ score }) => score)).toEqual(list.map(({ score }) => score).sort((one, other) => one - other));
  }
  expect(soil.every(({ model }) => model.terms.length === 0)).toBe(true);
  expect(fits.every(({ model }) => model.terms === fits[0]?.model.terms)).toBe(true);
  expect(fits[0]?.model.terms).toEqual(terms);
});

test("findTerms(weighed, side) without a find has the fits of soil as they are", () => {
  const { soil, fits, evidence } = found(runOf(() => 1000));
  expect(fits).toBe(soil);
  expect(evidence).toEqual([]);
});

// Places: a reading that stands off at each; a step or less flow from each but the last, and from the first only where the
// start is known; cold from two temperatures where fuel was 6 K colder; a fall.
test.each([
  ["from new", true, "suction", () => 288, 8 + 7 + 7 + 1],
  ["from new, behind the pump", true, "delivery", () => 288, 8 + 7 + 1],
  ["from nobody knows what", false, "suction", () => 288, 8 + 6 + 6 + 1],
  ["in fuel that was 6 K colder at times", true, "suction", (at: number) => (at === 2 ? 282 : 288), 8 + 7 + 7 + 2 + 1],
  ["in fuel that was nearly so", true, "suction", (at: number) => (at === 2 ? 282.1 : 288), 8 + 7 + 7 + 1],
] as const)("findTerms(weighed, side) counts the places it looked at: %s", (_, known, side, temperature, places) => {
  const run = runOf((at) => 1000 + 300 * at + (at === 4 ? 4000 : 0), { known, temperature });
  expect(found(run, side).evidence[0]?.places).toBe(places);
});

test("findTerms(weighed, side) tells what a find had to win, and what it won", () => {
  const { evidence, soil, fits } = found(runOf((at) => (at < 4 ? 1000 : 3500)));
  const [one] = evidence;
  expect(one?.before).toBe(soil[0]?.deviance);
  // Eight readings and twelve as it were, less a constant that grows and the step's own.
  const best = fits[0]?.model.growing ?? 0;
  expect(one).toMatchObject({ places: 23, chance: 0.01 });
  expect([18, 19]).toContain(one?.free);
  expect(best).toBeLessThan(2);
  const [free, deviations] = [one?.free ?? 0, one?.deviations ?? 0];
  // From printed tables Student's 1 - 0.01/46 lies between 4.0 and 4.5 with so much freedom.
  expect(deviations).toBeGreaterThan(4);
  expect(deviations).toBeLessThan(4.5);
  expect(one?.needed).toBeCloseTo(20 * Math.log(1 + deviations ** 2 / free), 9);
  expect((one?.before ?? 0) - (one?.after ?? 0)).toBeGreaterThan(one?.needed ?? 0);
});

test("findTerms(weighed, side) looks for cold and fall in one place each, at half the chance", () => {
  const chilled = found(runOf((at) => (at % 2 === 0 ? 1000 : 2500), { temperature: cold })).evidence[0];
  const fallen = found(runOf((at) => 5000 - 500 * at, { known: false })).evidence[0];
  for (const one of [chilled, fallen]) {
    expect(one).toMatchObject({ places: 1, chance: 0.005, free: 18 });
    // Printed tables: 3.1966 for 0.9975 with 18.
    expect(one?.deviations).toBeCloseTo(3.1966, 3);
  }
});

test("findTerms(weighed, side) finds one thing after another, each from where the last left off", () => {
  const { terms, evidence } = found(runOf((at) => (at < 5 ? 1000 : 4000) + (at === 2 ? 4000 : 0), { count: 10 }));
  expect(terms).toHaveLength(2);
  expect(new Set(terms)).toEqual(
    new Set([
      { kind: "outlier", at: 2 },
      { kind: "step", at: 5 },
    ]),
  );
  expect(evidence[1]?.before).toBeLessThan(evidence[0]?.before ?? 0);
  // What was found is not looked for again.
  expect(evidence.map(({ places }) => places)).toEqual([29, 28]);
});

test("findTerms(weighed, side) ends at four", () => {
  const off = [1, 3, 5, 7, 9];
  const { terms } = found(
    runOf((at) => 1000 + (off.includes(at) ? 9000 + 3000 * at : 0), { count: 16 }),
    "delivery",
    100,
  );
  expect(terms).toHaveLength(4);
});

test("findTerms(weighed, side) looks for nothing in fewer than four readings", () => {
  expect(found(runOf((at) => (at === 1 ? 9000 : 1000), { count: 3 })).terms).toEqual([]);
  expect(found(runOf((at) => (at === 1 ? 9000 : 1000), { count: 4 })).terms).not.toEqual([]);
});

test("findTerms(weighed, side) takes nothing for a step that only the last reading shows", () => {
  const { terms } = found(runOf((at) => (at === 7 ? 6000 : 1000)));
  expect(terms).toEqual([{ kind: "outlier", at: 7 }]);
});

test("findTerms(weighed, side) looks for less flow before the pump only", () => {
  const less = runOf((at) => (at < 4 ? 3000 : 600) + 0, { known: false, count: 8 });
  expect(found(less, "delivery").terms.some(({ kind }) => kind === "thin")).toBe(false);
});

test("findTerms(weighed, side) tries on with every law that was not far worse than the best, and with no growth always", () => {
  // Even growth with hardly any scatter tells laws apart, but for one reading.
  const instants = instantsOf(
    Array.from({ length: 12 }, (_, at) => 1000 + 800 * at + (wobble[at % 10] as number) / 30 + (at === 5 ? 300 : 0)),
    () => ({ noise: { gauge: 5, demand: 0.0005, viscosity: 0.0005 } }),
    proportional,
  );
  const { soil, fits, terms } = found(newRun(instants), "delivery");
  expect(terms).toEqual([{ kind: "outlier", at: 5 }]);
  const least = soil[0]?.score ?? 0;
  const [near, far] = [true, false].map((isNear) => soil.filter(({ score }) => score < least + 25 === isNear));
  const lawsOf = (of: typeof fits | undefined) => new Set(of?.map(({ model }) => model.shape));
  expect(far?.some(({ model }) => model.shape === flat)).toBe(true);
  expect(far?.length).toBeGreaterThan(1);
  expect(lawsOf(fits)).toEqual(new Set([...lawsOf(near), flat]));
});
