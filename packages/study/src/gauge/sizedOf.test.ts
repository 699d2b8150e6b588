import { expect, test } from "vitest";
import { instantsOf, newRun, proportional, sideWith, weighedOf } from "../../../../tests/support/gaugeRuns.js";
import { outliersOf } from "./outliersOf.js";
import { placeOf, readingOf, sizedOf, sizeOf } from "./sizedOf.js";
import type { Term } from "./Term.js";

type Of = (at: number) => number;
const sideOf = (of: Of, terms: readonly Term[], temperature: Of = () => 288, known = true) => {
  const reads = Array.from({ length: 8 }, (_, at) => of(at));
  const instants = instantsOf(reads, (at) => ({ temperature: temperature(at) }), proportional);
  return sideWith(weighedOf(known ? newRun(instants) : { instants, start: { known } }), terms);
};
const standing = () => sideOf((at) => (at === 4 ? 4000 : 1000), [{ kind: "outlier", at: 4 }]);

test("outliersOf(side, fit) says where a reading stands off, by how much, and what the others let expect", () => {
  expect(outliersOf("suction", standing())).toEqual([
    {
      row: 5,
      line: 6,
      side: "suction",
      read: 4000,
      expected: expect.closeTo(1000, 0),
      // 3 kPa, of 100 Pa each.
      deviations: expect.closeTo(30, 2),
    },
  ]);
});

test("outliersOf(side, fit) turns feed pressures back, as a gauge shows them", () => {
  expect(outliersOf("delivery", standing())).toEqual([
    {
      row: 5,
      line: 6,
      side: "delivery",
      read: -4000,
      expected: expect.closeTo(-1000, 0),
      deviations: expect.closeTo(-30, 2),
    },
  ]);
});

test("outliersOf(side, fit) is empty where none stands off, and without a fit", () => {
  const stepped = sideOf((at) => (at < 4 ? 1000 : 3500), [{ kind: "step", at: 4 }]);
  for (const fit of [stepped, sideOf(() => 1000, []), null]) expect(outliersOf("suction", fit)).toEqual([]);
});

test("sizeOf(fit, place) and sizedOf(fit) keep the places of the terms, readings that stand off among them", () => {
  const terms: readonly Term[] = [
    { kind: "step", at: 2 },
    { kind: "outlier", at: 4 },
    { kind: "step", at: 6 },
  ];
  const fit = sideOf((at) => (at < 2 ? 1000 : at < 6 ? 2000 : 4000) + (at === 4 ? 1500 : 0), terms);
  expect([0, 1, 2].map((place) => sizeOf(fit, place))).toEqual([1, 15, 2].map((one) => expect.closeTo(one, 1)));
  expect(sizeOf(fit, 3)).toBe(0);
  expect(sizeOf({ ...fit, explained: { ...fit.explained, fits: [] } }, 0)).toBe(0);
  expect(sizedOf(fit)).toEqual([
    { term: terms[0], place: 0, at: 2, by: expect.closeTo(1000, -1), reading: { row: 3, line: 4 } },
    { term: terms[2], place: 2, at: 6, by: expect.closeTo(2000, -1), reading: { row: 7, line: 8 } },
  ]);
});

test("sizedOf(fit) has nothing without terms, or without a fit", () => {
  const fit = sideOf(() => 1000, []);
  expect(sizedOf(fit)).toEqual([]);
  expect(sizedOf({ ...fit, explained: { ...fit.explained, terms: [{ kind: "fall" }], fits: [] } })).toEqual([]);
});

test("sizedOf(fit) gives cold at its coldest, in Pa there and with its temperature", () => {
  const temperature: Of = (at) => (at === 5 ? 268 : at % 2 === 1 ? 278 : 288);
  const term = { kind: "cold", below: 288 } as const;
  const fit = sideOf((at) => 1000 + 50 * (288 - temperature(at)), [term], temperature);
  expect(sizedOf(fit)).toEqual([
    { term, place: 0, at: 268, by: expect.closeTo(1000, -1), reading: { row: 6, line: 7 } },
  ]);
});

test("sizedOf(fit) gives a fall over the whole run", () => {
  const fit = sideOf((at) => 5000 - 500 * at, [{ kind: "fall" }], undefined, false);
  expect(sizedOf(fit)).toEqual([
    { term: { kind: "fall" }, place: 0, at: 7, by: expect.closeTo(-3500, -1), reading: { row: 8, line: 9 } },
  ]);
});

test("sizedOf(fit) of less flow is less of what is read, in proportion to the flow", () => {
  const term = { kind: "thin", at: 4 } as const;
  const fit = sideOf((at) => (at < 4 ? 1000 : 700), [term]);
  expect(sizeOf(fit, 0)).toBeCloseTo(0.3, 2);
  expect(sizedOf(fit)).toEqual([{ term, place: 0, at: 4, by: expect.closeTo(-300, -1), reading: { row: 5, line: 6 } }]);
});

test("readingOf(term, instants) is where a term begins, or is largest; placeOf(instant) is where a reading stands", () => {
  const instants = instantsOf([1, 2, 3, 4], (at) => ({ temperature: [280, 270, 265, 265][at] ?? 0 }));
  expect(readingOf({ kind: "step", at: 0 }, instants)).toBe(0);
  expect(readingOf({ kind: "outlier", at: 3 }, instants)).toBe(3);
  expect(readingOf({ kind: "fall" }, instants)).toBe(3);
  expect(readingOf({ kind: "cold", below: 280 }, instants)).toBe(2);
  expect(instants.map(placeOf)[1]).toEqual({ row: 2, line: 3 });
});
