import { expect, test } from "vitest";
import { type BlendPart, blend } from "./blend.js";
import { fuelState } from "./FuelState.js";
import { fuels } from "./fuels.js";
import { petrolOfClass } from "./petrolOfClass.js";

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

test("blend(parts) is an estimate that names each source of its parts once, and the rule", () => {
  const twice = blend(halves(dieselWinter, dieselWinter), { rule: "Refutas" });
  expect(twice.status).toBe("estimate");
  expect(twice.sources).toEqual([...dieselWinter.sources, "viscosity of the blend: Refutas rule, by volume"]);
});

test("blend(ten tenths) keeps to the range that all ten share", () => {
  const parts = Array.from({ length: 10 }, (_, i) => ({ fuel: i === 0 ? biodieselSoy : dieselWinter, share: 0.1 }));
  expect(blend(parts).range).toEqual({ from: 273.15, to: 313.15 });
});

test("blend(parts) takes fuels whose ranges meet at one temperature", () => {
  const cold = { ...dieselWinter, range: { from: 253.15, to: 293.15 } };
  expect(blend(halves(cold, paraffinic)).range).toEqual({ from: 293.15, to: 293.15 });
});

test("blend(parts).estimated leaves out the density of a small part, not that of a large one", () => {
  const estimated = (share: number) =>
    blend([
      { fuel: dieselWinter, share: 1 - share },
      { fuel: paraffinic, share },
    ]).estimated;
  expect(estimated(0.5)).toContain("density");
  expect(estimated(0.11)).toContain("density");
  expect(estimated(0.1)).not.toContain("density");
  expect(estimated(0.3 / 3 + 1e-12)).not.toContain("density");
});

test("blend(parts).estimated has viscosity where ethanol or oil is in it, and cloud point where one is given", () => {
  expect(blend(halves(dieselSummer, kerosene)).estimated).toEqual([]);
  expect(blend(halves(dieselWinter, kerosene)).estimated).toEqual([]);
  expect(blend(halves(petrol, ethanol)).estimated).toContain("viscosity");
  const oil = { ...dieselSummer, composition: { oil: 1 } };
  expect(blend(halves(petrol, oil)).estimated).toEqual(["viscosity"]);
});

test("blend(diesel, biodiesel of no known cloud point) knows only the highest it can be", () => {
  const { cloudPoint: _, cloudPointLimit: __, ...unknown } = biodieselSoy;
  const third = blend([fuels.dieselArctic, dieselWinter, unknown].map((fuel) => ({ fuel, share: 1 / 3 })));
  expect(third).not.toHaveProperty("cloudPoint");
  expect(third.cloudPointLimit).toBe(277.15);
  expect(blend(halves(dieselSummer, biodieselSoy))).not.toHaveProperty("cloudPoint");
  // By volume holds for diesel and biodiesel only, and half of this one is half kerosene.
  expect(blend(halves(blend(halves(dieselWinter, kerosene)), biodieselSoy)).cloudPointLimit).toBe(288.15);
});

test("blend(petrols) takes the higher Reid value and the waiver of the one with ethanol, in either order", () => {
  const american = petrolOfClass({ standard: "ASTM D4814", class: "E", ethanol: 0.1 });
  const law = { kind: "Reid", reid: 103e3, slope: 3, ethanol: { share: expect.closeTo(0.05, 12), rule: "US waiver" } };
  expect(blend(halves(petrol, american)).vapourPressure).toEqual(law);
  expect(blend(halves(american, petrol)).vapourPressure).toEqual(law);
});

test("blend(petrol, another fuel).vapourPressure is petrol's, without ethanol's own law and beside any other", () => {
  const reid = { kind: "Reid", reid: 60e3, slope: 3 };
  const ethanolHalf = { share: 0.5, rule: "EU waiver" };
  expect(blend(halves(petrol, ethanol)).vapourPressure).toEqual({ ...reid, ethanol: ethanolHalf });
  const mixed = blend(halves(dieselWinter, petrol));
  expect(mixed.vapourPressure).toEqual({ kind: "highest of", parts: [reid, dieselWinter.vapourPressure] });
  expect(mixed.estimated).not.toContain("vapour pressure");
  expect(blend(halves(mixed, kerosene)).vapourPressure).toEqual({
    kind: "highest of",
    parts: [reid, dieselWinter.vapourPressure, kerosene.vapourPressure],
  });
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
