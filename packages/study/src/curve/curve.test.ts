import { fuelState } from "@thirstline/core";
import { build, readSystem, type System } from "@thirstline/spec";
import { expect, test } from "vitest";
import { check } from "../check/check.js";
import { curve } from "./curve.js";

/** A plain lift-pump system; `more` replaces or adds whole lines, a key's last one counting. */
function systemOf(
  changes: { pump?: string; filter?: string; tank?: string; limits?: string; fuel?: string } = {},
): System {
  const text = `
format: thirstline/1
name: bench
fuel: ${changes.fuel ?? "{ kind: diesel, grade: winter, cloud point: -16 degC, temperature: 15 degC }"}
place: { altitude: 0 m }
demand: { burn: 60 L/h, return: 40 L/h }
tank: ${changes.tank ?? "{ full depth: 1 m, low depth: 0.2 m, vent: open }"}
suction:
  - line: { name: hose, length: 3 m, bore: 10 mm, surface: rubber hose }
  - rise: ${changes.pump === "none" ? "-1 m" : "0.5 m"}
  - filter: ${changes.filter ?? filter("")}
pump: ${changes.pump ?? "{ kind: fixed, flow: 200 L/h, relief: 80 kPa, relief to: inlet }"}
limits: ${changes.limits ?? "{ vacuum clean: 20 kPa, vacuum at change: 40 kPa }"}
`;
  const read = readSystem(text, { file: "bench.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(({ message }) => message).join("\n"));
  return read.system;
}

/** A filter tested at one point: its drop is 4 kPa x flow / (100 L/h) x dynamic viscosity / (3 mm2/s x 830 kg/m3). */
function filter(more: string): string {
  return `{ name: element, flow test: [{ drop: 4 kPa, flow: 100 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }] ${more} }`;
}

const WARM = 288.15;
const COLD = 263.15;

test("curve(system) gives at its own demand what check gives", () => {
  const system = systemOf({ filter: filter(", restriction: 3") });
  const demand = 100e-3 / 3600;
  const [point] = curve(system, { to: 2 * demand, points: 3 }).points;
  const [checked] = check(system).points;
  expect(point?.demand[1]).toBeCloseTo(demand, 15);
  expect(point?.clean?.vacuum.middle[1]).toBeCloseTo(checked?.vacuum.middle ?? Number.NaN, 6);
  expect(point?.now?.vacuum.middle[1]).toBeCloseTo(checked?.vacuumNow?.middle ?? Number.NaN, 6);
  expect(point?.now?.feedPressure?.middle[1]).toBeCloseTo(checked?.feedPressure?.middle ?? Number.NaN, 6);
});

test("curve(system) soils an element until it shows its terminal drop at the file's own temperature and demand", () => {
  const [point] = curve(systemOf({ filter: filter(", terminal drop: 25 kPa") })).points;
  const { density, kinematicViscosity } = fuelState(build(systemOf()).fuel, { temperature: WARM });
  const clean = 4e3 * ((density * kinematicViscosity) / (830 * 3e-6));
  const grown = (point?.duty.vacuumAtChange?.middle ?? 0) - (point?.duty.vacuum.middle ?? 0);
  expect(grown).toBeCloseTo(25e3 - clean, 6);
});

test("curve(system) keeps the soil of a due element when it gets cold: what it adds grows with viscosity alone", () => {
  const system = systemOf({ filter: filter(", terminal drop: 25 kPa") });
  const [warm, cold] = curve(system, { temperatures: [WARM, COLD] }).points;
  const added = (point: typeof warm) => (point?.duty.vacuumAtChange?.middle ?? 0) - (point?.duty.vacuum.middle ?? 0);
  const viscosity = (temperature: number) => {
    const state = fuelState(build(system).fuel, { temperature });
    return state.density * state.kinematicViscosity;
  };
  expect(added(cold) / added(warm)).toBeCloseTo(viscosity(COLD) / viscosity(WARM), 9);
  expect(curve(system).atChange).toEqual({ parts: ["element"], temperature: WARM });
});

test("curve(system) has no curve at change when no terminal drop is stated, and none now when no soil is", () => {
  const answer = curve(systemOf());
  expect(answer.atChange).toBeNull();
  expect(answer.points[0]).toMatchObject({ now: null, atChange: null, duty: { vacuumAtChange: null } });
});

test("curve(system) says of an element past its terminal drop that it is", () => {
  const [point] = curve(systemOf({ filter: filter(", terminal drop: 25 kPa, restriction: 10") })).points;
  expect(point?.cautions).toContainEqual(
    expect.objectContaining({ code: "past terminal drop", part: "element", terminalDrop: 25e3 }),
  );
  const [fresh] = curve(systemOf({ filter: filter(", terminal drop: 25 kPa") })).points;
  expect(fresh?.cautions.map(({ code }) => code)).not.toContain("past terminal drop");
});

test("curve(system) never lets the vacuum fall as demand grows", () => {
  const { points } = curve(systemOf({ filter: filter(", terminal drop: 25 kPa") }), { temperatures: [WARM, COLD] });
  for (const { clean, atChange } of points) {
    for (const column of [clean?.vacuum.middle, atChange?.vacuum.middle]) {
      expect(column).toHaveLength(61);
      expect(column?.every((value, at) => at === 0 || value >= (column[at - 1] ?? 0))).toBe(true);
    }
  }
});

test("curve(system) is a horizontal up to the pump's flow where relief goes back to the tank", () => {
  const answer = curve(systemOf({ pump: "{ kind: fixed, flow: 200 L/h, relief: 80 kPa, relief to: tank }" }), {
    to: 300e-3 / 3600,
    points: 4,
  });
  const vacuum = answer.points[0]?.clean?.vacuum.middle ?? [];
  expect(answer.suctionFollows).toBe("pump");
  expect([vacuum[1], vacuum[2]]).toEqual([vacuum[0], vacuum[0]]);
  expect(vacuum[3]).toBeGreaterThan(vacuum[0] ?? 0);
});

test("curve(system) leaves a gap in the feed pressure where the pump cannot move the demand", () => {
  const [point] = curve(systemOf(), { to: 400e-3 / 3600, points: 5 }).points;
  const feed = [...(point?.clean?.feedPressure?.middle ?? [])];
  expect(feed.map(Number.isNaN)).toEqual([false, false, false, true, true]);
});

test("curve(system) with no pump gives the pressure at the engine, the vacuum with its sign turned", () => {
  const answer = curve(systemOf({ pump: "none", limits: "{ feed pressure: 1 kPa }" }), { points: 3 });
  const state = answer.points[0]?.clean;
  expect(answer.pump).toBe("none");
  // toBeCloseTo tells 0 from -0 no more than a gauge does.
  state?.vacuum.middle.forEach((vacuum, at) => {
    expect(state.feedPressure?.middle[at]).toBeCloseTo(-vacuum, 9);
  });
  expect(state?.feedPressure?.middle[0]).toBeGreaterThan(0);
});

test("curve(system) keeps likely figures between both ends of what is known", () => {
  const rated = "{ name: element, rating: { size: 10 um, kind: beta 75, area: 0.2 m2, thickness: 0.6 mm } }";
  const [point] = curve(systemOf({ filter: rated }), { points: 3 }).points;
  const { middle, band } = point?.clean?.vacuum ?? {};
  expect(band?.low[2]).toBeLessThan(middle?.[2] ?? 0);
  expect(band?.high[2]).toBeGreaterThan(middle?.[2] ?? 0);
  const feed = point?.clean?.feedPressure;
  expect(feed?.band?.low[1]).toBeLessThan(feed?.middle[1] ?? 0);
  expect(curve(systemOf()).points[0]?.clean?.vacuum.band).toBeNull();
});

test("curve(system) reads the same terminal drop at both ends of an estimated element", () => {
  const rated =
    "{ name: element, rating: { size: 10 um, kind: beta 75, area: 1 m2, thickness: 0.6 mm }, terminal drop: 25 kPa }";
  const duty = curve(systemOf({ filter: rated })).points[0]?.duty.vacuumAtChange;
  expect(duty?.high).toBeCloseTo(duty?.low ?? Number.NaN, 6);
});

test("curve(system) ends a bit beyond the ceiling, or where it is told to", () => {
  const [point] = curve(systemOf()).points;
  expect(point?.demand.at(-1)).toBeCloseTo(1.15 * (point?.ceilings.atChange.flow.middle ?? 0), 15);
  expect(curve(systemOf(), { to: 1e-4 }).points[0]?.demand.at(-1)).toBe(1e-4);
});

test("curve(system) names what takes the ground from under its figures", () => {
  const below = curve(systemOf(), { temperatures: [250] }).points[0];
  expect(below?.unanswered.map(({ code }) => code)).toContain("below cloud point");
  expect(below?.clean).not.toBeNull();
  const blocked = curve(systemOf({ tank: "{ full depth: 1 m, low depth: 0.2 m, vent: blocked }" })).points[0];
  expect(blocked).toMatchObject({ unanswered: [{ code: "shut", by: "the tank vent" }], clean: null });
});

test.each([
  [{ points: 1 }, "curve requires points to be a whole number from 2 to 10001, got 1"],
  [{ points: 2.5 }, "curve requires points to be a whole number from 2 to 10001, got 2.5"],
  [{ to: Number.NaN }, "curve requires to to be more than 0 m3/s, got NaN"],
  [{ temperatures: [0] }, "fuelState requires temperature to be more than 0 K, got 0"],
])("curve(system, %o) refuses", (options, message) => {
  expect(() => curve(systemOf(), options)).toThrow(message);
});
