import { expect, test } from "vitest";
import { blend } from "./blend.js";
import { fuelState } from "./FuelState.js";
import { fuelLike } from "./fuelLike.js";
import { fuels } from "./fuels.js";

const codes = (state: { cautions: readonly { code: string }[] }) => state.cautions.map(({ code }) => code);

test("fuelState(kerosene, 0 degC) is the example", () => {
  const state = fuelState(fuels.kerosene, { temperature: 273.15 });
  expect(state.kinematicViscosity).toBeCloseTo(2.671e-6, 9);
  expect(state.density).toBe(815.1);
  expect(state.temperature).toBe(273.15);
  expect(state.cautions).toEqual([]);
});

test("fuelState(given) takes figures as they are", () => {
  expect(fuelState({ density: 830, kinematicViscosity: 3e-6 })).toStrictEqual({
    density: 830,
    kinematicViscosity: 3e-6,
    vapourPressure: 0,
    cautions: [{ code: "no vapour pressure" }],
  });
  const given = { density: 745, kinematicViscosity: 6e-7, vapourPressure: 40e3, temperature: 293 };
  expect(fuelState(given)).toEqual({ ...given, cautions: [] });
});

test("fuelState(winter diesel, colder than its cloud point) says so, with the plugging point, and that water can freeze", () => {
  const state = fuelState(fuels.dieselWinter, { temperature: 263.15 });
  expect(state.cautions).toEqual([
    {
      code: "below cloud point",
      temperature: 263.15,
      cloudPoint: 266.15,
      coldFilterPluggingPoint: 253.15,
      estimated: true,
    },
    { code: "estimated", properties: ["cloud point"] },
    { code: "water can freeze", temperature: 263.15 },
  ]);
});

test("fuelState(fuel, at) speaks of a typical cloud point only where the fuel could be cloudy", () => {
  expect(codes(fuelState(fuels.dieselWinter, { temperature: 283.15 }))).toEqual([]);
  expect(codes(fuelState(fuels.dieselWinter, { temperature: 275.15 }))).toEqual(["estimated"]);
});

test("fuelState(summer diesel, cold) says that its cloud point is not known", () => {
  expect(fuelState(fuels.dieselSummer, { temperature: 274.15 }).cautions).toEqual([
    { code: "cloud point not known", temperature: 274.15, limit: 277.15 },
  ]);
  expect(codes(fuelState(fuels.dieselSummer, { temperature: 278.15 }))).toEqual([]);
});

test("fuelState(fuel, outside its range) still answers and says that no data back it", () => {
  const hot = fuelState(fuels.ethanol, { temperature: 303.15 });
  expect(hot.cautions).toContainEqual({ code: "above range", temperature: 303.15, to: 293.15 });
  expect(hot.kinematicViscosity).toBeGreaterThan(1e-6);
  const cold = fuelState(fuels.paraffinic, { temperature: 283.15 });
  expect(cold.cautions).toContainEqual({ code: "below range", temperature: 283.15, from: 293.15 });
});

test("fuelState(fuel, on a border) has nothing to warn of, whatever rounding the temperature carries", () => {
  // -20 + 273.15 is 253.14999999999998
  expect(codes(fuelState(fuels.petrol, { temperature: -20 + 273.15 }))).toEqual(["water can freeze"]);
  expect(codes(fuelState(fuels.dieselWinter, { temperature: -7 + 273.15 }))).not.toContain("below cloud point");
});

test.each(Object.entries(fuels))(
  "fuelState(fuels.%s, any temperature of its range) is whole and physical",
  (_name, fuel) => {
    let last = fuelState(fuel, { temperature: fuel.range.from });
    for (let kelvin = fuel.range.from + 1; kelvin <= fuel.range.to; kelvin++) {
      const state = fuelState(fuel, { temperature: kelvin });
      expect(codes(state)).not.toContain("below range");
      expect(codes(state)).not.toContain("above range");
      expect(state.density).toBeLessThan(last.density);
      expect(state.kinematicViscosity).toBeLessThan(last.kinematicViscosity);
      expect(state.vapourPressure).toBeGreaterThanOrEqual(last.vapourPressure);
      expect(state.vapourPressure).toBeLessThan(101325);
      last = state;
    }
    expect(fuel.sources.length).toBeGreaterThan(0);
  },
);

test.each(Object.entries(fuels))("fuels.%s survives being written as JSON", (_name, fuel) => {
  const copy = JSON.parse(JSON.stringify(fuel)) as typeof fuel;
  expect(copy).toEqual(fuel);
  const at = { temperature: fuel.range.to };
  expect(fuelState(copy, at)).toEqual(fuelState(fuel, at));
});

test("fuelState(fuel between its measured points) has nothing to say of them", () => {
  const viscosity = [253.15, 303.15].map((temperature, i) => ({ temperature, kinematicViscosity: i ? 2e-6 : 15e-6 }));
  expect(codes(fuelState(fuelLike(fuels.dieselWinter, { viscosity }), { temperature: 283.15 }))).toEqual([]);
});

test("fuelState(fuel of no known plugging point, below its cloud point) leaves the plugging point out", () => {
  const { cautions } = fuelState(fuelLike(fuels.dieselWinter, { cloudPoint: 265 }), { temperature: 260 });
  expect(cautions[0]).toStrictEqual({ code: "below cloud point", temperature: 260, cloudPoint: 265, estimated: false });
});

test("fuelState(fuel with no highest cloud point) says at any temperature that its cloud point is an estimate", () => {
  const { cloudPointLimit: _, ...open } = fuels.dieselWinter;
  expect(fuelState(open, { temperature: 303.15 }).cautions).toEqual([
    { code: "estimated", properties: ["cloud point"] },
  ]);
});

test("fuelState(biodiesel or paraffinic, at) says what of it is estimated or not known", () => {
  expect(fuelState(fuels.paraffinic, { temperature: 303.15 }).cautions).toEqual([
    { code: "estimated", properties: ["viscosity", "density"] },
    { code: "no vapour pressure" },
  ]);
  expect(codes(fuelState(fuels.petrol, { temperature: 303.15 }))).toEqual([]);
});

test("fuelState(blend with a small part inside its own range) does not warn of the part", () => {
  const parts = [
    { fuel: fuels.dieselWinter, share: 0.93 },
    { fuel: fuels.biodieselSoy, share: 0.07 },
  ];
  expect(codes(fuelState(blend(parts), { temperature: 283.15 }))).toEqual([]);
});

test("fuelState refuses impossible figures, naming the field", () => {
  expect(() => fuelState(fuels.petrol, { temperature: 0 })).toThrow(
    "fuelState requires temperature to be more than 0 K, got 0",
  );
  expect(() => fuelState(fuels.petrol, { temperature: Number.NaN })).toThrow(
    "temperature to be more than 0 K, got NaN",
  );
  expect(() => fuelState(fuels.petrol as never)).toThrow("temperature to be more than 0 K, got NaN");
  expect(() => fuelState({ density: 0, kinematicViscosity: 3e-6 })).toThrow("density to be more than 0 kg/m3, got 0");
  expect(() => fuelState({ density: 830, kinematicViscosity: Number.NaN })).toThrow(
    "kinematicViscosity to be more than 0 m2/s, got NaN",
  );
  expect(() => fuelState({ density: 830, kinematicViscosity: 3e-6, vapourPressure: -1 })).toThrow(
    "vapourPressure to be at least 0 Pa, got -1",
  );
  expect(() => fuelState({ density: 830, kinematicViscosity: 3e-6, temperature: -40 })).toThrow(
    "temperature to be more than 0 K, got -40",
  );
});
