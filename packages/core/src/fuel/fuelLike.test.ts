import { expect, test } from "vitest";
import { blend } from "./blend.js";
import { fuelState } from "./FuelState.js";
import { fuelLike } from "./fuelLike.js";
import { fuels } from "./fuels.js";

const point = (temperature: number, kinematicViscosity: number) => ({ temperature, kinematicViscosity });

test("fuelLike(fuel, one viscosity on its own line) is that fuel", () => {
  const { dieselSummer } = fuels;
  const on = fuelState(dieselSummer, { temperature: 313.15 }).kinematicViscosity;
  const like = fuelLike(dieselSummer, { viscosity: [point(313.15, on)] });
  const ratio =
    fuelState(like, { temperature: 253.15 }).kinematicViscosity /
    fuelState(dieselSummer, { temperature: 253.15 }).kinematicViscosity;
  expect(ratio).toBeCloseTo(1, 10);
  expect(like.range).toEqual(dieselSummer.range);
  expect(like.measured).toBeUndefined();
});

test("fuelLike(fuel, two viscosities) passes through both, and beyond them says so", () => {
  const like = fuelLike(fuels.paraffinic, {
    viscosity: [point(273.15, 7e-6), point(313.15, 2.9e-6)],
    name: "delivery",
  });
  expect(like.name).toBe("delivery");
  expect(like.status).toBe("measured");
  expect(like.estimated).toEqual(["density"]);
  expect(fuelState(like, { temperature: 273.15 }).kinematicViscosity).toBeCloseTo(7e-6, 18);
  expect(like.range).toEqual({ from: 273.15, to: 313.15 });
  const winter = fuelLike(fuels.dieselWinter, { viscosity: [point(293.15, 4e-6), point(313.15, 2.5e-6)] });
  expect(fuelState(winter, { temperature: 283.15 }).cautions).toEqual([
    { code: "beyond measured points", temperature: 283.15, from: 293.15, to: 313.15 },
  ]);
});

test("fuelLike(fuel, one density) meets it and expands as the fuel does", () => {
  const like = fuelLike(fuels.dieselWinter, { density: [{ temperature: 303.15, density: 825 }] });
  expect(fuelState(like, { temperature: 303.15 }).density).toBeCloseTo(825, 9);
  expect(like.density).toMatchObject({ kind: "volume correction" });
  const soy = fuelLike(fuels.biodieselSoy, { density: [{ temperature: 288.15, density: 880 }] });
  expect(fuelState(soy, { temperature: 298.15 }).density).toBeCloseTo(880 - 7.33 * (880 / 884.8), 9);
});

test("fuelLike(fuel, two densities) takes the line through them", () => {
  const density = [
    { temperature: 283.15, density: 840 },
    { temperature: 303.15, density: 824 },
  ];
  expect(fuelState(fuelLike(fuels.dieselWinter, { density }), { temperature: 293.15 }).density).toBeCloseTo(832, 9);
});

test("fuelLike(fuel, a cloud point) drops the plugging point of the other fuel, and the estimate", () => {
  const like = fuelLike(fuels.dieselWinter, { cloudPoint: 257.15 });
  expect([like.cloudPoint, like.coldFilterPluggingPoint]).toEqual([257.15, undefined]);
  expect(like.estimated).toEqual([]);
  const both = fuelLike(fuels.dieselWinter, { cloudPoint: 257.15, coldFilterPluggingPoint: 247.15 });
  expect(both.coldFilterPluggingPoint).toBe(247.15);
  expect(fuelLike(fuels.dieselWinter, {}).coldFilterPluggingPoint).toBe(253.15);
});

test("fuelLike(petrol E10, a Reid value) takes it as that of the fuel as it is", () => {
  const like = fuelLike(fuels.petrolE10, { reid: 55e3 });
  expect(like.vapourPressure).toEqual({ kind: "Reid", reid: 55e3, slope: 3 });
});

test("fuelLike(fuel, {}) is that fuel under another heading", () => {
  const { sources, ...same } = fuelLike(fuels.dieselWinter, {});
  const { sources: own, ...winter } = fuels.dieselWinter;
  expect(same).toEqual({ ...winter, status: "measured" });
  expect(sources).toEqual([...own, "stated by the user: nothing; the rest as winter diesel"]);
  expect(fuelLike(fuels.petrol, {})).not.toHaveProperty("coldFilterPluggingPoint");
});

test("fuelLike(fuel, figures).sources names what was stated, and those are estimates no more", () => {
  const like = fuelLike(blend([fuels.dieselWinter, fuels.ethanol].map((fuel) => ({ fuel, share: 0.5 }))), {
    viscosity: [point(293.15, 2e-6)],
    density: [{ temperature: 293.15, density: 810 }],
    cloudPoint: 260,
    reid: 20e3,
  });
  expect(like.estimated).toEqual([]);
  expect(like.sources.at(-1)).toMatch(
    /^stated by the user: viscosity, density, cloud point, vapour pressure; the rest/,
  );
  expect(fuelLike(fuels.paraffinic, { density: [{ temperature: 293.15, density: 775 }] }).estimated).toEqual([
    "viscosity",
  ]);
});

test("fuelLike(fuel, viscosities beyond its range) widens the range to them", () => {
  const { from, to } = fuels.dieselWinter.range;
  const measured = [point(293.15, 4e-6), point(333.15, 1.8e-6)];
  const like = fuelLike(fuels.dieselWinter, { viscosity: measured });
  expect(like.range).toEqual({ from, to: 333.15 });
  expect(like.viscosity).toEqual({ kind: "points", points: measured });
  expect(fuelLike(fuels.dieselWinter, { viscosity: [point(343.15, 1.5e-6)] }).range).toEqual({ from, to: 343.15 });
  expect(fuelLike(fuels.dieselWinter, { viscosity: [point(243.15, 20e-6)] }).range).toEqual({ from: 243.15, to });
});

test("fuelLike refuses what no fuel has, naming the field", () => {
  const like = (measured: Parameters<typeof fuelLike>[1]) => () => fuelLike(fuels.dieselWinter, measured);
  expect(like({ viscosity: [] })).toThrow("fuelLike requires viscosity to be one point or more, got a list of 0");
  expect(like({ viscosity: [point(313.15, 1e-9)] })).toThrow("points[0].kinematicViscosity to be at least 2.1e-7 m2/s");
  expect(like({ viscosity: [point(293.15, 2e-6), point(313.15, 3e-6)] })).toThrow("fuel being thinner when warmer");
  expect(like({ viscosity: [point(Number.NaN, 2e-6)] })).toThrow(
    "viscosity[0].temperature to be more than 10 K, got NaN",
  );
  expect(like({ density: [] })).toThrow("density to be one point or more, got a list of 0");
  expect(like({ density: [{ temperature: 288.15, density: 0.83 }] })).toThrow("between 610 and 1164 kg/m3, got 0.83");
  expect(like({ cloudPoint: -16 })).toThrow("cloudPoint to be more than 0 K, got -16");
  expect(like({ coldFilterPluggingPoint: Number.NaN })).toThrow("coldFilterPluggingPoint to be more than 0 K, got NaN");
  expect(like({ reid: -1 })).toThrow("reid to be more than 0 Pa, got -1");
});
