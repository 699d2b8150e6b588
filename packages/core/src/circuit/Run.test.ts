import { expect, test } from "vitest";
import { fuelState } from "../fuel/index.js";
import { filter, fitting, line, orifice, rise, strainer, valve } from "../parts/index.js";
import type { Circuit } from "./Circuit.js";
import { compile, restrict } from "./compile.js";
import { guessFlow } from "./guessFlow.js";
import { hasFriction } from "./hasFriction.js";
import { isSoiled } from "./isSoiled.js";
import { isSpread } from "./isSpread.js";
import { parallel } from "./parallel.js";
import { profileOf } from "./profile.js";
import { Run } from "./Run.js";
import { series } from "./series.js";

const diesel = fuelState({ density: 830, kinematicViscosity: 3e-6 });
const compiled = (circuit: Circuit, passage: "smooth" | "early" = "smooth") =>
  compile(circuit, { fuel: diesel, passage, end: "middle" });
const tested = (name: string, restriction = 1) =>
  filter({ name, clean: { drop: 1000, flow: 5e-5, dynamicViscosity: 2.49e-3 }, restriction });
const hose = line({ length: 2, bore: 0.008, roughness: 1e-5 });
const check = valve({ opening: 500, kv: 1e-4 });
const hole = orifice({ diameter: 0.003, dischargeCoefficient: 0.6 });
const lossless = fitting({ bore: 0.01, k: 0 });

test("restrict(compiled, restrictions) sets named elements in series and in banks, and others go back to their own", () => {
  const of = (a: number, b: number, c: number) =>
    series(tested("a", a), parallel(tested("b", b), series(hole, tested("c", c))));
  const { run, stops } = compiled(of(2, 3, 4));
  const drops = () => [run.at(4e-5), ...profileOf(stops, diesel, 4e-5).map(({ drop }) => drop)];
  const expected = (a: number, b: number, c: number) => {
    const other = compiled(of(a, b, c));
    return [other.run.at(4e-5), ...profileOf(other.stops, diesel, 4e-5).map(({ drop }) => drop)].map((drop) =>
      expect.closeTo(drop ?? Number.NaN, 9),
    );
  };
  restrict({ run, stops }, new Map([["a", 5]]));
  expect(drops()).toEqual(expected(5, 3, 4));
  restrict(
    { run, stops },
    new Map([
      ["b", 6],
      ["c", 7],
    ]),
  );
  expect(drops()).toEqual(expected(2, 6, 7));
  restrict({ run, stops }, new Map());
  expect(drops()).toEqual(expected(2, 3, 4));
});

test("new Run(terms, extra) resists as the terms and a linear resistance besides", () => {
  const { terms, run } = compiled(series(hose, rise({ height: 1 }), tested("a")));
  const more = new Run(terms, 2e7);
  expect(more.at(5e-5) - run.at(5e-5)).toBeCloseTo(1000, 9);
  expect(more.flowAt(more.at(5e-5)) / 5e-5).toBeCloseTo(1, 12);
});

test("Run.at(flow) is Infinity backward through a check valve and -Infinity or Infinity through what is shut", () => {
  const held = compiled(series(hose, check)).run;
  expect([held.at(-1e-5), held.slope, held.rest, held.flowAt(500), held.flowAt(-1)]).toEqual([
    -Infinity,
    Infinity,
    500,
    0,
    0,
  ]);
  const shut = compiled(series(hose, filter({ clean: { drop: 1, flow: 1, dynamicViscosity: 1 }, blocked: true }))).run;
  expect([shut.at(1e-5), shut.at(-1e-5), shut.slope, shut.flowAt(1e9)]).toEqual([Infinity, -Infinity, Infinity, 0]);
});

test("Run.rest of a bank of check valves is the least opening, besides the run's own", () => {
  const later = valve({ opening: 900, kv: 1e-4 });
  expect(compiled(series(check, parallel(later, later))).run.rest).toBe(1400);
  expect(compiled(series(check, parallel(later, hose))).run.rest).toBe(500);
});

test("Run.free says whether nothing resists: a rise alone does not", () => {
  const free = (circuit: Circuit) => compiled(circuit).run.free;
  expect([rise({ height: 2 }), series(), lossless].map(free)).toEqual([true, true, true]);
  expect([hose, hole, tested("a"), parallel(hole, hole)].map(free)).toEqual([false, false, false, false]);
});

test("Run.flowAt(drop) across the steps of two lines is the last flow below each", () => {
  const narrow = line({ length: 1, bore: 0.006, roughness: 1e-5 });
  const { run } = compiled(series(hose, narrow), "early");
  for (const bore of [0.006, 0.008]) {
    const step = (2300 * Math.PI * bore * 3e-6) / 4;
    const [below, above] = [run.at(step * (1 - 1e-12)), run.at(step * (1 + 1e-12))];
    expect(above).toBeGreaterThan(1.05 * below);
    for (const share of [0.01, 0.5, 0.99]) {
      const flow = run.flowAt(below + share * (above - below));
      expect(flow).toBeLessThanOrEqual(step * (1 + 1e-15));
      expect(flow / step).toBeCloseTo(1, 14);
      expect(run.slope).toBe(Infinity);
    }
  }
});

test("guessFlow(resisting, target, sign) is the answer without lines of their own, and near it with a turbulent one", () => {
  expect(guessFlow({ linear: 2, quadratic: 3, own: [] }, 16, 1)).toBe(2);
  const { run, terms } = compiled(series(hose, hole));
  for (const flow of [1e-6, 1e-4, 1e-3, -1e-3]) {
    const sign = flow < 0 ? -1 : 1;
    const guess = guessFlow(terms, Math.abs(run.friction(flow)), sign);
    expect(guess / Math.abs(flow)).toBeGreaterThan(0.7);
    expect(guess / Math.abs(flow)).toBeLessThan(1.5);
  }
});

test("profileOf(stops, fuel, flow) tells of a hole its Reynolds number but no regime or velocity, backward as forward", () => {
  const [of, back] = [2e-5, -2e-5].map((flow) => profileOf(compiled(series(hole, hose)).stops, diesel, flow));
  expect(of?.[0]).toMatchObject({
    reynolds: expect.closeTo((4 * 2e-5) / (Math.PI * 0.003 * 3e-6), 9),
    regime: null,
    velocity: null,
  });
  expect(back?.[0]).toMatchObject({ reynolds: expect.closeTo((4 * 2e-5) / (Math.PI * 0.003 * 3e-6), 9) });
  expect(back?.[1]).toMatchObject({
    regime: "laminar",
    velocity: expect.closeTo(-2e-5 / ((Math.PI / 4) * 0.008 ** 2), 12),
  });
  expect(profileOf(compiled(tested("a")).stops, diesel, 2e-5)[0]).toMatchObject({ reynolds: null, regime: null });
});

test("profileOf(stops, fuel, flow) gives a bank its branches' head besides their friction", () => {
  const branch = series(rise({ height: 1 }), tested("a"));
  const [bank] = profileOf(compiled(parallel(branch, branch)).stops, diesel, 1e-4);
  expect(bank?.drop).toBeCloseTo(830 * 9.80665 + 1000, 8);
});

test("hasFriction(circuit) is so where anything in it resists, and a fitting does by any of its losses", () => {
  const by = (loss: object) => hasFriction(fitting({ bore: 0.01, ...loss }));
  expect([{ k: 0.1 }, { equivalentLength: 3 }].map(by)).toEqual([true, true]);
  expect(
    [
      [0, 0],
      [1, 0],
      [0, 1],
    ].map(([k1 = 0, kInfinity = 0]) => by({ twoK: { k1, kInfinity } })),
  ).toEqual([false, true, true]);
  expect([series(lossless, hose), series(lossless, rise({ height: 1 }))].map(hasFriction)).toEqual([true, false]);
});

test("isSpread(circuit) is so where one part of it is known only as a band", () => {
  const rated = filter({ rating: { size: 1e-5, kind: "nominal", area: 0.1, thickness: 1e-3 } });
  const cloth = strainer({ aperture: 1e-4, wire: 6e-5, area: 1e-3 });
  expect([series(hose, rated), parallel(hose, rated), series(hose, parallel(cloth, hose))].map(isSpread)).toEqual([
    true,
    true,
    true,
  ]);
  expect(isSpread(series(hose, parallel(hose, tested("a"))))).toBe(false);
});

test("isSoiled(circuit) is so where one element of it is other than clean", () => {
  const soiled = tested("a", 1.5);
  expect([series(hose, soiled), parallel(tested("b"), soiled), soiled].map(isSoiled)).toEqual([true, true, true]);
  expect(isSoiled(series(hose, parallel(hose, tested("a"))))).toBe(false);
});
