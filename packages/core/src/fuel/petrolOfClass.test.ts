import { expect, test } from "vitest";
import { fuelState } from "./FuelState.js";
import { fuels } from "./fuels.js";
import { petrolOfClass } from "./petrolOfClass.js";
import { petrolVapourPressure } from "./petrolVapourPressure.js";

const at = { temperature: 303.15 };

test("petrolOfClass(EN 228 D1 with 5 % ethanol) adds the European waiver to the class limit", () => {
  const fuel = petrolOfClass({ standard: "EN 228", class: "D1", ethanol: 0.05 });
  expect(fuel.name).toBe("petrol, EN 228 class D1, 5 % ethanol");
  expect(fuelState(fuel, at).vapourPressure).toBeCloseTo(petrolVapourPressure({ reid: 98e3, slope: 3, ...at }), 6);
});

test("petrolOfClass(ASTM D4814) adds 1 psi from 9 % ethanol on, nothing below", () => {
  const pressure = (ethanol: number) =>
    fuelState(petrolOfClass({ standard: "ASTM D4814", class: "A", ethanol }), at).vapourPressure;
  expect(pressure(0.1)).toBeCloseTo(petrolVapourPressure({ reid: 62e3 + 6894.757293168361, slope: 3, ...at }), 6);
  expect(pressure(0.05)).toBeCloseTo(petrolVapourPressure({ reid: 62e3, slope: 3, ...at }), 6);
  expect(pressure(0)).toBe(pressure(0.05));
});

test("petrolOfClass(given).sources says where its Reid value comes from, in place of petrol's own", () => {
  const { sources } = petrolOfClass({ standard: "EN 228", class: "C1" });
  const rest = fuels.petrol.sources.filter((source) => !source.includes("Reid"));
  expect(rest.length).toBe(fuels.petrol.sources.length - 1);
  expect(sources).toEqual([...rest, "Reid vapour pressure: EN 228 class C1, at most 80 kPa (seen)"]);
});

test("petrolOfClass refuses a class that does not exist and names those that do", () => {
  expect(() => petrolOfClass({ standard: "EN 228", class: "G" })).toThrow(
    'petrolOfClass requires class to be one of A, B, C, C1, D, D1, E, E1, F, F1 (EN 228), got "G"',
  );
  expect(() => petrolOfClass({ standard: "ASTM D4814", class: "F" })).toThrow(
    'class to be one of AA, A, B, C, D, E (ASTM D4814), got "F"',
  );
  expect(() => petrolOfClass({ standard: "EN 229" as "EN 228", class: "A" })).toThrow(
    'standard to be one of EN 228, ASTM D4814, got "EN 229"',
  );
  expect(() => petrolOfClass({ standard: "EN 228", class: "A", ethanol: 0.85 })).toThrow(
    "ethanol to be between 0 and 0.1, got 0.85",
  );
});
