import { describe, expect, test } from "vitest";
import { blend } from "./blend.js";
import { d341Line } from "./d341Line.js";
import { type DensityLaw, densityAt } from "./densityAt.js";
import { dieselGrade } from "./dieselGrade.js";
import { dissolvedAir } from "./dissolvedAir.js";
import { ethanolVapourRaise } from "./ethanolVapourRaise.js";
import { fuelState } from "./FuelState.js";
import { freedAir } from "./freedAir.js";
import { fuelLike, type MeasuredFuel } from "./fuelLike.js";
import { fuels } from "./fuels.js";
import { mixViscosity } from "./mixViscosity.js";
import { petrolOfClass } from "./petrolOfClass.js";
import { petrolVapourPressure } from "./petrolVapourPressure.js";
import { specificHeat } from "./specificHeat.js";
import { vapourPressureAt } from "./vapourPressureAt.js";
import { type ViscosityLaw, viscosityAt } from "./viscosityAt.js";
import { volumeCorrection } from "./volumeCorrection.js";
import { volumeCorrection60F } from "./volumeCorrection60F.js";
import { waterSolubility } from "./waterSolubility.js";

const thick = (temperature: number, kinematicViscosity: number) => ({ temperature, kinematicViscosity });
const heavy = (temperature: number, density: number) => ({ temperature, density });
const viscosity = (law: Partial<ViscosityLaw>, kelvin = 300) => viscosityAt(law as ViscosityLaw, kelvin);
const density = (law: Partial<DensityLaw>, kelvin = 300) => densityAt(law as DensityLaw, kelvin);
const linear = { kind: "linear", temperature: 288, density: 800, slope: -0.8 } as const;
const water = { kind: "two constants", a: 25, b: 5000 } as const;
const like = (measured: MeasuredFuel) => fuelLike(fuels.dieselWinter, measured);
const air = { densityAt15: 840, temperature: 293.15, pressure: 101325 };
const cold = { ...fuels.dieselWinter, range: { from: 253.15, to: 263.15 } };

const refused: [what: string, call: () => unknown, message: string][] = [
  [
    "a temperature at which fuel stands",
    () => viscosity({ kind: "D341", a: 9.5, b: 4 }, 20),
    "viscosityAt requires temperature to be one at which the fuel still flows, got 20",
  ],
  [
    "a line of no slope",
    () => viscosity({ kind: "D341", a: 9, b: 0 }),
    "viscosityAt requires law.b to be more than 0, got 0",
  ],
  [
    "a line without height",
    () => viscosity({ kind: "D341", a: Number.NaN, b: 4 }),
    "viscosityAt requires law.a to be a finite number, got NaN",
  ],
  [
    "a point thinner than the equation holds",
    () => viscosity({ kind: "points", points: [thick(300, 1e-9)], slope: 4 }),
    "viscosityAt requires points[0].kinematicViscosity to be at least 2.1e-7 m2/s, got 1e-9",
  ],
  [
    "a viscosity that rises as fuel warms",
    () => viscosity({ kind: "points", points: [thick(300, 1e-6), thick(310, 2e-6)] }),
    "viscosityAt requires points[1].kinematicViscosity to be less than 0.000001 m2/s, fuel being thinner when warmer, got 0.000002",
  ],
  [
    "a viscosity that stays as fuel warms",
    () => viscosity({ kind: "points", points: [thick(300, 1e-6), thick(310, 1e-6)] }),
    "viscosityAt requires points[1].kinematicViscosity to be less than 0.000001 m2/s, fuel being thinner when warmer, got 0.000001",
  ],
  [
    "no points of viscosity",
    () => viscosity({ kind: "points", points: [] }),
    "viscosityAt requires points to be one point or more, got a list of 0",
  ],
  [
    "one point of viscosity without a slope",
    () => viscosity({ kind: "points", points: [thick(300, 1e-6)] }),
    "viscosityAt requires slope to be more than 0, got NaN",
  ],
  [
    "a viscosity that stays as fuel cools",
    () => d341Line(thick(300, 1e-6), thick(290, 1e-6)),
    "d341Line requires second.kinematicViscosity to be more than 0.000001 m2/s, fuel being thinner when warmer, got 0.000001",
  ],
  [
    "no temperature for a density",
    () => density(linear, 0),
    "densityAt requires temperature to be more than 0 K, got 0",
  ],
  [
    "a temperature at which nothing is left",
    () => density({ ...linear, slope: -8 }, 388),
    "densityAt requires temperature to be one at which the law gives a density above 0, got 388",
  ],
  [
    "a line through no temperature",
    () => density({ ...linear, temperature: 0 }),
    "densityAt requires law.temperature to be more than 0 K, got 0",
  ],
  [
    "a line through no density",
    () => density({ ...linear, density: 0 }),
    "densityAt requires law.density to be more than 0 kg/m3, got 0",
  ],
  [
    "a line of unknown slope",
    () => density({ ...linear, slope: Number.NaN }),
    "densityAt requires law.slope to be a finite number of kg/m3 per K, got NaN",
  ],
  [
    "densities that do not share a whole",
    () => density({ kind: "mixed", parts: [{ share: 0.5, law: linear }] }),
    "densityAt requires the shares of parts to be 1 in all, got 0.5",
  ],
  [
    "a density mixed of nothing",
    () => density({ kind: "mixed", parts: [] }),
    "densityAt requires parts to be one part or more, got a list of 0",
  ],
  [
    "a density at no temperature",
    () => density({ kind: "points", points: [heavy(0, 800), heavy(310, 790)] }),
    "densityAt requires points[0].temperature to be more than 0 K, got 0",
  ],
  [
    "no density at a temperature",
    () => density({ kind: "points", points: [heavy(300, 0), heavy(310, 790)] }),
    "densityAt requires points[0].density to be more than 0 kg/m3, got 0",
  ],
  [
    "two densities at a temperature",
    () => density({ kind: "points", points: [heavy(300, 800), heavy(300, 790)] }),
    "densityAt requires points[1].temperature to be another than 300 K, got 300",
  ],
  [
    "one point of density",
    () => density({ kind: "points", points: [heavy(300, 800)] }),
    "densityAt requires points to be two points or more, got a list of 1",
  ],
  [
    "no points of density",
    () => density({ kind: "points", points: [] }),
    "densityAt requires points to be two points or more, got a list of 0",
  ],
  [
    "a standard without diesel grades",
    () => dieselGrade("EN 228" as "EN 590", "A"),
    'dieselGrade requires standard to be one of EN 590, ASTM D975, got "EN 228"',
  ],
  [
    "air in fuel colder than was tried",
    () => dissolvedAir({ ...air, temperature: 200 }),
    "dissolvedAir requires temperature to be between 228 and 423 K, got 200",
  ],
  [
    "air at less than no pressure",
    () => dissolvedAir({ ...air, pressure: -1 }),
    "dissolvedAir requires pressure to be at least 0 Pa, got -1",
  ],
  [
    "air freed from less than no pressure",
    () => freedAir({ ...air, saturatedAt: -1 }),
    "freedAir requires saturatedAt to be at least 0 Pa, got -1",
  ],
  [
    "an unknown waiver",
    () => ethanolVapourRaise(0.1, "waiver" as "EU waiver"),
    'ethanolVapourRaise requires rule to be one of EU waiver, US waiver, got "waiver"',
  ],
  [
    "fuel of no density",
    () => fuelState({ density: 0, kinematicViscosity: 3e-6 }),
    "fuelState requires density to be more than 0 kg/m3, got 0",
  ],
  [
    "fuel of no viscosity",
    () => fuelState({ density: 830, kinematicViscosity: 0 }),
    "fuelState requires kinematicViscosity to be more than 0 m2/s, got 0",
  ],
  [
    "a vapour pressure below none",
    () => fuelState({ density: 830, kinematicViscosity: 3e-6, vapourPressure: -1 }),
    "fuelState requires vapourPressure to be at least 0 Pa, got -1",
  ],
  [
    "a temperature below none",
    () => fuelState({ density: 830, kinematicViscosity: 3e-6, temperature: -40 }),
    "fuelState requires temperature to be more than 0 K, got -40",
  ],
  [
    "a blend of fuels whose ranges do not meet",
    () => blend([cold, fuels.paraffinic].map((fuel) => ({ fuel, share: 0.5 }))),
    'blend requires parts to be fuels with a common range of temperature, got "winter diesel 253.15 to 263.15 K, paraffinic diesel 293.15 to 313.15 K"',
  ],
  [
    "a cloud point in degC",
    () => like({ cloudPoint: -16 }),
    "fuelLike requires cloudPoint to be more than 0 K, got -16",
  ],
  [
    "a plugging point in degC",
    () => like({ coldFilterPluggingPoint: -26 }),
    "fuelLike requires coldFilterPluggingPoint to be more than 0 K, got -26",
  ],
  ["a Reid value below none", () => like({ reid: -1 }), "fuelLike requires reid to be more than 0 Pa, got -1"],
  [
    "viscosity stated at no point",
    () => like({ viscosity: [] }),
    "fuelLike requires viscosity to be one point or more, got a list of 0",
  ],
  [
    "viscosity stated in degC",
    () => like({ viscosity: [thick(10, 2e-6)] }),
    "fuelLike requires viscosity[0].temperature to be more than 10 K, got 10",
  ],
  [
    "density stated at no point",
    () => like({ density: [] }),
    "fuelLike requires density to be one point or more, got a list of 0",
  ],
  [
    "density stated in degC",
    () => like({ density: [heavy(10, 840)] }),
    "fuelLike requires density[0].temperature to be more than 10 K, got 10",
  ],
  [
    "density stated as none",
    () => like({ density: [heavy(288.15, 0)] }),
    "fuelLike requires density[0].density to be more than 0 kg/m3, got 0",
  ],
  [
    "stated densities at one temperature",
    () => like({ density: [heavy(288.15, 840), heavy(288.15, 830)] }),
    "densityAt requires points[1].temperature to be another than 288.15 K, got 288.15",
  ],
  [
    "parts without viscosity",
    () => mixViscosity([{ share: 1, kinematicViscosity: 0 }]),
    "mixViscosity requires parts[0].kinematicViscosity to be more than 0 m2/s, got 0",
  ],
  [
    "a viscosity too thin for Refutas",
    () => mixViscosity([{ share: 1, kinematicViscosity: 0.2e-6 }], "Refutas"),
    "mixViscosity requires parts[0].kinematicViscosity to be more than 2e-7 m2/s, got 2e-7",
  ],
  [
    "an unknown rule of mixing",
    () => mixViscosity([{ share: 1, kinematicViscosity: 1e-6 }], "Arrhenius" as "Refutas"),
    'mixViscosity requires rule to be one of Grunberg-Nissan, Kendall-Monroe, Refutas, got "Arrhenius"',
  ],
  [
    "more ethanol than a class allows",
    () => petrolOfClass({ standard: "EN 228", class: "A", ethanol: 0.11 }),
    "petrolOfClass requires ethanol to be between 0 and 0.1, got 0.11",
  ],
  [
    "a standard without petrol classes",
    () => petrolOfClass({ standard: "EN 590" as "EN 228", class: "A" }),
    'petrolOfClass requires standard to be one of EN 228, ASTM D4814, got "EN 590"',
  ],
  [
    "a slope no petrol has",
    () => petrolVapourPressure({ reid: 60e3, slope: 5, temperature: 293.15 }),
    "petrolVapourPressure requires slope to be between 1 and 4 degF per %, got 5",
  ],
  [
    "vapour of petrol at no temperature",
    () => petrolVapourPressure({ reid: 60e3, slope: 3, temperature: 0 }),
    "petrolVapourPressure requires temperature to be more than 0 K, got 0",
  ],
  [
    "heat of fuel at no temperature",
    () => specificHeat({ densityAt15: 840, temperature: 0 }),
    "specificHeat requires temperature to be more than 0 K, got 0",
  ],
  [
    "vapour pressure without its height",
    () => vapourPressureAt({ ...water, a: Number.NaN }, 300),
    "vapourPressureAt requires law.a to be a finite number, got NaN",
  ],
  [
    "vapour pressure without its slope",
    () => vapourPressureAt({ ...water, b: Number.NaN }, 300),
    "vapourPressureAt requires law.b to be a finite number of K, got NaN",
  ],
  [
    "a volume correction at no temperature",
    () => volumeCorrection({ densityAt15: 840, temperature: 0 }),
    "volumeCorrection requires temperature to be more than 0 K, got 0",
  ],
  [
    "a volume correction of an unknown group",
    () => volumeCorrection({ densityAt15: 840, temperature: 300, group: "tar" as "crude" }),
    'volumeCorrection requires group to be one of fuel oil, jet fuel, transition, petrol, crude, got "tar"',
  ],
  [
    "a density beyond the tables at 60 degF",
    () => volumeCorrection60F({ densityAt60F: 600, temperature: 300 }),
    "volumeCorrection60F requires densityAt60F to be between 610 and 1164 kg/m3, got 600",
  ],
  [
    "a correction from 60 degF at no temperature",
    () => volumeCorrection60F({ densityAt60F: 850, temperature: 0 }),
    "volumeCorrection60F requires temperature to be more than 0 K, got 0",
  ],
  [
    "a correction from 60 degF of an unknown group",
    () => volumeCorrection60F({ densityAt60F: 850, temperature: 300, group: "tar" as "crude" }),
    'volumeCorrection60F requires group to be one of fuel oil, jet fuel, transition, petrol, crude, got "tar"',
  ],
  [
    "water in fuel of no mass",
    () => waterSolubility({ hydrogenToCarbon: 0.15, molarMass: 0, temperature: 293 }),
    "waterSolubility requires molarMass to be more than 0 kg/mol, got 0",
  ],
  [
    "water in fuel colder than was tried",
    () => waterSolubility({ hydrogenToCarbon: 0.15, molarMass: 0.2, temperature: 230 }),
    "waterSolubility requires temperature to be between 233 and 373 K, got 230",
  ],
];

describe("fuel refuses", () => {
  test.each(refused)("%s", (_, call, message) => {
    expect(call).toThrow(expect.objectContaining({ name: "InputError", message }));
  });
});
