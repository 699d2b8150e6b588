import {
  armourCannon,
  brundrett,
  clothGeometry,
  ehrhardt,
  fuelState,
  screenLaws,
  solve,
  strainer,
} from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../support/table.js";

const fuel = fuelState({ density: 835, kinematicViscosity: 3e-6 });

const cloths = readTable("screens/cloths.csv");
const drops = readTable("screens/drops.csv");
const laws = { armourCannon, ehrhardt, brundrett };

const clothOf = (row: Row) => ({ aperture: row.number("aperture_um") * 1e-6, wire: row.number("wire_um") * 1e-6 });

test.each([
  ["mesh_per_in", (row: Row) => 0.0254 / clothGeometry(clothOf(row)).pitch],
  ["open_area", (row: Row) => clothGeometry(clothOf(row)).openArea],
  ["porosity", (row: Row) => clothGeometry(clothOf(row)).porosity],
  ["surface_per_m", (row: Row) => clothGeometry(clothOf(row)).surface],
] as const)("clothGeometry(cloth) has the published %s", (column, got) => {
  const error = measure(cloths.rows, got, column, "half steps");
  report(`screens/cloths-${column}`, cloths, error);
  expect(cloths.rows).toHaveLength(3);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("armourCannon, ehrhardt and brundrett(cloth, fuel, faceVelocity) give the published drops as printed", () => {
  const got = (row: Row) =>
    laws[row.text("law") as keyof typeof laws](clothOf(row), fuel, row.number("face_velocity_m_s"));
  const error = measure(drops.rows, got, "drop_pa", "half steps");
  report("screens/drops", drops, error);
  expect(drops.rows).toHaveLength(18);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("armourCannon(cloth, fuel, faceVelocity) has the published creeping limit", () => {
  const slow = 1e-9;
  const mu = fuel.density * fuel.kinematicViscosity;
  const got = (row: Row) => armourCannon(clothOf(row), fuel, slow) / (mu * slow);
  const error = measure(cloths.rows, got, "creeping_per_m", "half steps");
  report("screens/creeping", cloths, error);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("solve(strainer, fuel, { end }) is the lowest, middle and highest of the published drops", () => {
  const area = 0.002;
  for (const cloth of cloths.rows) {
    const slow = drops.rows.filter(
      (row) => row.text("aperture_um") === cloth.text("aperture_um") && row.number("face_velocity_m_s") === 0.01,
    );
    const due = [...slow].sort((left, right) => left.number("drop_pa") - right.number("drop_pa"));
    expect(due).toHaveLength(3);
    (["low", "middle", "high"] as const).forEach((end, at) => {
      const row = due[at];
      if (!row) throw new Error("a cloth lacks one of its three laws");
      const drop = solve(strainer({ ...clothOf(cloth), area }), fuel, { end }).drop(0.01 * area);
      expect(Math.abs(drop - row.number("drop_pa")), String(row)).toBeLessThanOrEqual(row.halfStep("drop_pa"));
    });
  }
});

// Ours, just outside what the published drops show: 1.65 to 2.66.
test("screenLaws differ by a factor of 1.6 to 2.7 over the published drops", () => {
  const spreads = [0, 6, 12].flatMap((start) =>
    [0, 1].map((speed) => {
      const three = [0, 2, 4].map((law) => drops.rows[start + law + speed]?.number("drop_pa") ?? Number.NaN);
      return Math.max(...three) / Math.min(...three);
    }),
  );
  expect(spreads).toHaveLength(6);
  expect(Math.min(...spreads)).toBeGreaterThan(1.6);
  expect(Math.max(...spreads)).toBeLessThan(2.7);
});

test.each(Object.keys(screenLaws) as (keyof typeof screenLaws)[])(
  "screenLaws.%s rises with every sieve cloth made finer",
  (name) => {
    const table = readTable("screens/sieve-cloth.csv");
    expect(table.rows).toHaveLength(21);
    const slow = table.rows.map((row) => screenLaws[name].drop(clothOf(row), fuel, 0.01));
    slow.forEach((drop, at) => {
      if (at > 0) expect(drop, String(table.rows[at])).toBeGreaterThan(slow[at - 1] ?? Infinity);
    });
  },
);

const velocities = Array.from({ length: 181 }, (_, index) => 10 ** (-12 + index / 12));

test.each(Object.keys(screenLaws) as (keyof typeof screenLaws)[])(
  "screenLaws.%s is odd in velocity, 0 at rest, and rises from creep to torrent",
  (name) => {
    const { drop } = screenLaws[name];
    const cloth = { aperture: 150e-6, wire: 100e-6 };
    expect(Math.abs(drop(cloth, fuel, 0))).toBe(0);
    let last = 0;
    for (const velocity of velocities) {
      const here = drop(cloth, fuel, velocity);
      expect(here).toBeGreaterThan(last);
      expect(drop(cloth, fuel, -velocity)).toBe(-here);
      last = here;
    }
  },
);

test("screenLaws hold, in their own Reynolds numbers, at every published drop but two", () => {
  // Slow flow through the finest cloth: Re 0.06 where Armour and Cannon begin at 0.1, 0.46 where Ehrhardt begins at 0.5.
  const outside = drops.rows.filter((row) => {
    const { reynolds, holds } = screenLaws[row.text("law") as keyof typeof screenLaws];
    const here = reynolds(clothOf(row), fuel, row.number("face_velocity_m_s"));
    return here < holds.from || here > holds.to;
  });
  expect(outside.map((row) => `${row.text("law")} ${row.text("aperture_um")}`)).toEqual([
    "armourCannon 75",
    "ehrhardt 75",
  ]);
});

test.each([
  ["aperture", { aperture: Number.NaN, wire: 1e-4 }, "clothGeometry requires aperture to be more than 0 m, got NaN"],
  ["wire", { aperture: 1e-4, wire: 0 }, "clothGeometry requires wire to be more than 0 m, got 0"],
] as const)("clothGeometry(cloth) refuses a bad %s and names it", (_, cloth, message) => {
  expect(() => clothGeometry(cloth)).toThrow(message);
});
