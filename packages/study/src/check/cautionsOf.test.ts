import type { FuelState } from "@thirstline/core";
import { expect, test } from "vitest";
import { cautionsOf, type PointFacts } from "./cautionsOf.js";

const fuel = { density: 840, kinematicViscosity: 4e-6, vapourPressure: 100, temperature: 288, cautions: [] };
const supply = {
  tanks: [{ name: "port tank", vent: { kind: "open" } }],
  pump: { kind: "fixed" },
  delivery: {},
  ambientPressure: 100e3,
};
const facts = (more: object = {}) =>
  ({
    supply,
    altitude: 0,
    fuel: fuel as unknown as FuelState,
    densityAt15: 840,
    returned: 0,
    rows: { suction: [], delivery: [] },
    lowest: { pressure: { low: 90e3, middle: 95e3, high: 96e3 }, part: "rise" },
    vacuum: 5e3,
    hasBore: true,
    ...more,
  }) as unknown as PointFacts;
const codes = (more: object = {}) => cautionsOf(facts(more)).map(({ code }) => code);
const ofRow = (row: object) =>
  cautionsOf(facts({ rows: { suction: [], delivery: [{ name: "it", reynolds: null, regime: null, ...row }] } }));
const lowest = (low: number, middle = low) => ({ lowest: { pressure: { low, middle, high: middle }, part: "rise" } });

test("cautionsOf(facts) has nothing to say of an everyday point", () => expect(codes()).toEqual([]));

test("cautionsOf(facts) speaks of a high place from 300 m", () => {
  expect(codes({ altitude: 299 })).toEqual([]);
  expect(cautionsOf(facts({ altitude: 300 }))).toEqual([{ code: "altitude", altitude: 300, ambientPressure: 100e3 }]);
});

test("cautionsOf(facts) speaks of boiling where less than 10 kPa are left over the vapour pressure", () => {
  expect(codes({ ...lowest(10.1e3), vacuum: 90e3 })).not.toContain("vapour margin");
  expect(cautionsOf(facts({ ...lowest(10.099e3, 95e3) }))).toEqual([
    { code: "vapour margin", margin: 9999, part: "rise" },
  ]);
});

test("cautionsOf(facts) speaks of a low point where the path has 1 kPa less than the pump's inlet, or than the air", () => {
  expect(codes(lowest(94e3))).toEqual([]);
  expect(cautionsOf(facts(lowest(93.9e3)))).toEqual([
    { code: "low point in the path", pressure: 93.9e3, part: "rise" },
  ]);
  // With the tank above the pump its inlet is over the air's pressure.
  expect(codes({ vacuum: -10e3, ...lowest(99.5e3) })).toEqual([]);
  expect(codes({ vacuum: -10e3, ...lowest(98.9e3) })).toEqual(["low point in the path"]);
  expect(codes({ lowest: null })).toEqual([]);
});

test("cautionsOf(facts) speaks of freed air from 2 % on, where the method reaches", () => {
  const drawn = { lowest: null, vacuum: 40e3 };
  const [found] = cautionsOf(facts(drawn));
  expect(found).toMatchObject({ code: "freed air", vacuum: 40e3 });
  expect(codes({ ...drawn, vacuum: 1e3 })).toEqual([]);
  for (const outside of [{ densityAt15: 629 }, { densityAt15: 901 }, { vacuum: 100e3 }, { vacuum: 0 }]) {
    expect(codes({ ...drawn, ...outside })).toEqual([]);
  }
  for (const temperature of [undefined, 227, 424])
    expect(codes({ ...drawn, fuel: { ...fuel, temperature } })).toEqual([]);
  for (const temperature of [228, 423]) {
    expect(codes({ ...drawn, fuel: { ...fuel, temperature } })).toEqual(["freed air"]);
  }
  for (const densityAt15 of [630, 900]) expect(codes({ ...drawn, densityAt15 })).toEqual(["freed air"]);
});

test("cautionsOf(facts) speaks of a blocked vent by its tank's name or place, and of a tank that fills", () => {
  const tanks = [{ vent: { kind: "blocked" } }, { name: "day tank", vent: { kind: "blocked" } }];
  expect(cautionsOf(facts({ supply: { ...supply, tanks } }))).toEqual([
    { code: "vent blocked", tank: "tank 1" },
    { code: "vent blocked", tank: "day tank" },
  ]);
  const row = (flow: number, kind = "tank") => ({ kind, name: "day tank", flow, part: null });
  const suction = [row(-1e-6), row(0), row(1e-6), row(-1e-6, "line")];
  expect(cautionsOf(facts({ rows: { suction, delivery: [] } }))).toEqual([
    { code: "tank runs backwards", tank: "day tank", flow: 1e-6 },
  ]);
});

test("cautionsOf(facts) speaks of what is not judged: no bore, no delivery behind a pump, the heat that comes back", () => {
  expect(codes({ hasBore: false })).toEqual(["no bore at the pump"]);
  expect(codes({ supply: { ...supply, delivery: null } })).toEqual(["delivery not judged"]);
  expect(codes({ supply: { ...supply, delivery: null, pump: { kind: "none" } } })).toEqual([]);
  expect(codes({ returned: 1e-6 })).toEqual(["return heat ignored"]);
});

test("cautionsOf(facts) speaks of flow that is neither laminar nor turbulent, and of K and orifices below their Reynolds numbers", () => {
  expect(ofRow({ part: { kind: "line" }, regime: "transitional", reynolds: 3000 })).toEqual([
    { code: "transitional", part: "it", reynolds: 3000 },
  ]);
  const bend = (by: string, reynolds: number | null) => ofRow({ part: { kind: "fitting", loss: { by } }, reynolds });
  expect(bend("k", 900)).toEqual([{ code: "constant K in laminar flow", part: "it", reynolds: 900 }]);
  expect([...bend("k", 2300), ...bend("k", 0), ...bend("k", null), ...bend("two-k", 900)]).toEqual([]);
  const hole = (reynolds: number | null) => ofRow({ part: { kind: "orifice" }, reynolds });
  expect(hole(9999)).toEqual([{ code: "orifice at low Reynolds number", part: "it", reynolds: 9999 }]);
  expect([...hole(1e4), ...hole(0), ...hole(null)]).toEqual([]);
  expect(ofRow({ part: { kind: "strainer" } })).toEqual([{ code: "strainer laws", part: "it" }]);
});

test("cautionsOf(facts) speaks of filters: an estimated medium with how far off, one fitted backwards, soil on an unknown share", () => {
  const medium = (low: number, high: number, source = "estimate") => ({ linear: { low, high }, source });
  const filter = { kind: "filter", medium: medium(1, 1), reversed: false, restriction: 1, housing: null };
  const of = (more: object) => ofRow({ part: { ...filter, ...more } });
  expect(of({})).toEqual([]);
  expect(of({ medium: medium(1, 4) })).toEqual([
    { code: "estimated medium", part: "it", source: "estimate", factor: 2 },
  ]);
  expect(of({ reversed: true })).toEqual([{ code: "reversed", part: "it" }]);
  const onePoint = { medium: medium(1, 1, "one-point flow test"), restriction: 2 };
  expect(of(onePoint)).toEqual([{ code: "housing share unknown", part: "it" }]);
  expect([
    ...of({ ...onePoint, restriction: 1 }),
    ...of({ ...onePoint, housing: {} }),
    ...of({ restriction: 2 }),
  ]).toEqual([]);
});
