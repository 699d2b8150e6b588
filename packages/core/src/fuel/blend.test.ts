import { expect, test } from "vitest";
import { type BlendPart, blend } from "./blend.js";
import { fuelState } from "./FuelState.js";
import { fuels } from "./fuels.js";

const { dieselSummer, dieselWinter, biodieselSoy, petrol, ethanol, kerosene, keroseneLight, paraffinic } = fuels;
const halves = (first: BlendPart["fuel"], second: BlendPart["fuel"]) => [
  { fuel: first, share: 0.5 },
  { fuel: second, share: 0.5 },
];

test("blend(parts) names itself after its parts, unless named", () => {
  const parts = [
    { fuel: dieselWinter, share: 0.8 },
    { fuel: biodieselSoy, share: 0.2 },
  ];
  expect(blend(parts).name).toBe("80 % winter diesel + 20 % soy biodiesel");
  expect(blend(parts, { name: "tank 2" }).name).toBe("tank 2");
  expect(blend(parts).composition).toEqual({ diesel: 0.8, biodiesel: 0.2 });
});

test("blend(a fuel with itself) is that fuel", () => {
  const at = { temperature: 278.15 };
  const [own, twice] = [fuelState(dieselWinter, at), fuelState(blend(halves(dieselWinter, dieselWinter)), at)];
  expect(twice.density).toBeCloseTo(own.density, 9);
  expect(twice.kinematicViscosity / own.kinematicViscosity).toBeCloseTo(1, 12);
  expect(twice.vapourPressure).toBe(own.vapourPressure);
  expect(blend(halves(dieselWinter, dieselWinter)).cloudPoint).toBeCloseTo(266.15, 9);
});

test("blend(three parts) takes any number and leaves out a part of no share", () => {
  const three = blend([
    { fuel: dieselWinter, share: 0.5 },
    { fuel: kerosene, share: 0.3 },
    { fuel: biodieselSoy, share: 0.2 },
  ]);
  expect(three.composition).toEqual({ diesel: 0.5, kerosene: 0.3, biodiesel: 0.2 });
  const none = blend([
    { fuel: dieselWinter, share: 1 },
    { fuel: biodieselSoy, share: 0 },
  ]);
  expect(none.composition).toEqual({ diesel: 1 });
  expect(none.minorParts).toBeUndefined();
});

test("blend(parts, { rule }) follows the rule asked for", () => {
  const at = { temperature: 293.15 };
  const by = (rule: "Grunberg-Nissan" | "Kendall-Monroe" | "Refutas") =>
    fuelState(blend(halves(dieselSummer, keroseneLight), { rule }), at).kinematicViscosity;
  expect(by("Kendall-Monroe")).toBeGreaterThan(by("Grunberg-Nissan"));
  expect(by("Refutas")).toBeLessThan(by("Grunberg-Nissan"));
});

test("blend(diesel, biodiesel) estimates the cloud point by volume; with kerosene it is not known, only bounded", () => {
  const b20 = blend([
    { fuel: dieselWinter, share: 0.8 },
    { fuel: biodieselSoy, share: 0.2 },
  ]);
  expect(b20.cloudPoint).toBeCloseTo(267.55, 9);
  expect(b20.estimated).toContain("cloud point");
  const thinned = blend(halves(dieselWinter, kerosene));
  expect(thinned.cloudPoint).toBeUndefined();
  expect(thinned.cloudPointLimit).toBe(277.15);
  expect(blend(halves(dieselSummer, biodieselSoy)).cloudPoint).toBeUndefined();
  expect(blend(halves(dieselSummer, biodieselSoy)).cloudPointLimit).toBeCloseTo((277.15 + 288.15) / 2, 9);
  expect(blend(halves(petrol, ethanol)).cloudPointLimit).toBeUndefined();
  expect(b20.coldFilterPluggingPoint).toBeUndefined();
});

test("blend(parts) narrows its range to parts above a tenth, and only warns of smaller ones", () => {
  const share = (biodiesel: number) =>
    blend([
      { fuel: dieselWinter, share: 1 - biodiesel },
      { fuel: biodieselSoy, share: biodiesel },
    ]);
  expect(share(0.2).range).toEqual({ from: 273.15, to: 313.15 });
  expect(share(0.1).range).toEqual(dieselWinter.range);
  expect(fuelState(share(0.07), { temperature: 268.15 }).cautions).toContainEqual({
    code: "part outside range",
    temperature: 268.15,
    part: "soy biodiesel",
    share: 0.07,
    from: 273.15,
    to: 313.15,
  });
});

test("blend(blends) keeps the shares of everything in them", () => {
  const e5 = blend(halves(fuels.petrolE10, petrol));
  expect(e5.composition.petrol).toBeCloseTo(0.95, 12);
  expect(e5.composition.ethanol).toBeCloseTo(0.05, 12);
  expect(e5.minorParts?.map((part) => part.share)).toEqual([0.05]);
  expect(e5.vapourPressure).toMatchObject({ kind: "Reid", reid: 60e3 });
  expect(fuelState(e5, { temperature: 293.15 }).vapourPressure).toBeGreaterThan(
    fuelState(petrol, { temperature: 293.15 }).vapourPressure,
  );
});

test("blend(parts) is as volatile as its most volatile part", () => {
  const at = { temperature: 293.15 };
  const pressure = (parts: BlendPart[]) => fuelState(blend(parts), at).vapourPressure;
  expect(pressure(halves(dieselWinter, kerosene))).toBe(fuelState(kerosene, at).vapourPressure);
  expect(pressure(halves(dieselWinter, petrol))).toBe(fuelState(petrol, at).vapourPressure);
  expect(pressure(halves(dieselWinter, ethanol))).toBe(fuelState(ethanol, at).vapourPressure);
  expect(blend(halves(dieselWinter, ethanol)).estimated).toContain("vapour pressure");
  expect(blend(halves(biodieselSoy, biodieselSoy)).vapourPressure).toEqual({ kind: "none" });
});

test("blend refuses too few parts, wrong shares, and fuels without a common range", () => {
  expect(() => blend([{ fuel: petrol, share: 1 }])).toThrow(
    "blend requires parts to be two fuels or more, got a list of 1",
  );
  expect(() =>
    blend(halves(petrol, ethanol).slice(1).concat(halves(petrol, ethanol).slice(1), halves(petrol, ethanol))),
  ).toThrow("blend requires the shares of parts to be 1 in all, got 2");
  const cold = { ...dieselWinter, range: { from: 253.15, to: 263.15 } };
  expect(() => blend(halves(cold, paraffinic))).toThrow(
    'parts to be fuels with a common range of temperature, got "winter diesel 253.15 to 263.15 K, paraffinic diesel 293.15 to 313.15 K"',
  );
});
