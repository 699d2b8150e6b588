import { expect, test } from "vitest";
import type { Instant } from "./Instant.js";
import { RatioTable } from "./RatioTable.js";
import { perDemand, termAt } from "./Term.js";

const instant = { temperature: 268, time: 50 } as Instant;
const at = (term: Parameters<typeof termAt>[0], place: number, ratio = 2) => termAt(term, place, instant, ratio, 200);

test("termAt(step) adds resistance from its reading on", () => {
  expect([3, 4, 5].map((place) => at({ kind: "step", at: 4 }, place))).toEqual([0, 1, 1]);
});

test("termAt(cold) adds the more, the colder and the more soil, and nothing above where it begins", () => {
  expect(at({ kind: "cold", below: 273 }, 0)).toBeCloseTo(1, 12); // 2 x 5 K / 10
  expect(at({ kind: "cold", below: 273 }, 0, 0.5)).toBeCloseTo(0.5, 12);
  expect(at({ kind: "cold", below: 260 }, 0)).toBe(0);
});

test("termAt(fall) takes resistance away with time, all of it over the span", () => {
  expect(at({ kind: "fall" }, 0)).toBeCloseTo(-0.25, 12);
});

test("termAt(outlier) and termAt(thin) add no resistance", () => {
  expect([at({ kind: "outlier", at: 4 }, 4), at({ kind: "thin", at: 4 }, 4)]).toEqual([0, 0]);
});

test("perDemand(instant, demand, ratio) is what is read of all the demand more", () => {
  const table = new RatioTable((demand, ratio) => 1000 * demand * ratio);
  expect(perDemand({ table } as Instant, 1, 3)).toBeCloseTo(3000, 6);
  const curved = new RatioTable((demand, ratio) => 1000 * demand * demand * ratio);
  expect(perDemand({ table: curved } as Instant, 1, 1)).toBeCloseTo(2000, 6);
});
