import {
  absorberLaw,
  assumedLoading,
  bankEfficiency,
  betaEfficiency,
  binCount,
  bowlDrainInterval,
  cakeFromLine,
  cakeLaw,
  cakeResistance,
  capacityPoint,
  captureOf,
  cleanDropFactor,
  codeOf,
  convertSize,
  countFrom,
  distributionFromCounts,
  distributionFromMass,
  filtrateAt,
  fitCakeRun,
  fitLoadingLaw,
  freeWater,
  fuelState,
  InputError,
  type LifeGiven,
  life,
  loadAtRatio,
  loadingLaw,
  mixDistributions,
  parseCode,
  rescaleLaw,
  resistanceRatio,
  resistanceSlope,
  type SoilElement,
  separationAt,
  series,
  settlingSpeed,
  type TestDust,
  tankBalance,
  timeToFilter,
  waterThroughStages,
} from "@thirstline/core";
import { describe, expect, test } from "vitest";

const fuel = distributionFromMass({ mass: 1e-3 });
const none = new Float64Array(binCount);
const tank = { volume: 1, burn: 1e-5, delivered: fuel, start: fuel, suction: none, delivery: none };
const cake = loadingLaw("cake", { cake: 1 });
const run = { area: 1, drop: 1, dynamicViscosity: 1, solids: 1 };
const capacity = { soil: 0.04, rise: 35e3, flow: 5e-5, dynamicViscosity: 2.5e-3 };
const diesel = { density: 830, kinematicViscosity: 3e-6 };
const separation = { efficiency: 0.9, flow: 1e-4 };

const load = { share: 1, demand: { burn: 1e-5, return: 0 } };
const phase = { duration: 3600, fuel: fuelState(diesel), loads: [load] };
const element: SoilElement = { name: "a", law: cake, efficiency: null, soil: 0 };
const year: LifeGiven = {
  supply: {
    ambientPressure: 1e5,
    tanks: [{ depth: 0, vent: { kind: "open" }, path: null }],
    suction: series(),
    pump: { kind: "none" },
    delivery: null,
  },
  elements: [element],
  phases: [phase],
  delivered: fuel,
  held: "tank",
  points: [{ fuel: phase.fuel, demand: 1e-5 }],
  limits: {},
  horizon: 1,
};

const refused: [what: string, call: () => unknown, message: string][] = [
  [
    "a code that rises",
    () => parseCode("18/20/13"),
    "parseCode requires the scale number at 6 um to be at most 18, the number before it: larger particles are among the smaller size's too, got 20",
  ],
  [
    "a code that rises past a gap",
    () => parseCode("18/*/19"),
    "parseCode requires the scale number at 14 um to be at most 18",
  ],
  [
    "a code of two numbers",
    () => parseCode("18/16"),
    'parseCode requires code to be three scale numbers from 0 to 28 such as "18/16/13", got "18/16"',
  ],
  ["a code of four numbers", () => parseCode("18/16/13/9"), "parseCode requires code to be three scale numbers"],
  ["a scale number of 29", () => parseCode("29/16/13"), "parseCode requires code to be three scale numbers"],
  ["words for a code", () => parseCode("clean"), "parseCode requires code to be three scale numbers"],
  [
    "counts that rise",
    () => codeOf({ at4: 10, at6: 20, at14: 1 }),
    "codeOf requires counts.at6 to be at most 10 particles per mL, the count at the smaller size (which includes these), got 20",
  ],
  [
    "a negative count",
    () => codeOf({ at4: 10, at6: 5, at14: -1 }),
    "codeOf requires counts.at14 to be at least 0 particles per mL, got -1",
  ],
  [
    "a NaN of counted particles",
    () => codeOf({ at4: 10, at6: 5, at14: 1 }, { at14: Number.NaN }),
    "codeOf requires counted.at14 to be at least 0 particles, got NaN",
  ],
  [
    "an old size beyond the table",
    () => convertSize(31e-6, "ISO 4402", "um(c)"),
    "convertSize requires size to be between 0.000001 and 0.00003 m, got 0.000031",
  ],
  [
    "a new size beyond the table",
    () => convertSize(3e-6, "um(b)", "ISO 4402"),
    "convertSize requires size in um(c) to be between 0.0000042 and 0.0000249 m",
  ],
  ["no size", () => convertSize(0, "um(b)", "um(c)"), "convertSize requires size to be more than 0 m, got 0"],
  [
    "a count of 0",
    () => distributionFromCounts({ at4: 10, at6: 5, at14: 0 }),
    "distributionFromCounts requires counts.at14 to be more than 0 particles per mL; where none were seen, give one over the volume counted, got 0",
  ],
  [
    "rising counts for a distribution",
    () => distributionFromCounts({ at4: 10, at14: 20 }),
    "distributionFromCounts requires counts.at6 to be at most 10",
  ],
  [
    "a cutoff below the bins",
    () => distributionFromCounts({ at4: 10, at6: 5 }, { from: 1e-7, to: 70e-6 }),
    "distributionFromCounts requires cutoffs.from to be between 7e-7 and 0.000004 m, got 1e-7",
  ],
  [
    "a cutoff among the counts",
    () => distributionFromCounts({ at4: 10, at6: 5 }, { from: 1e-6, to: 6e-6 }),
    "distributionFromCounts requires cutoffs.to to be more than 0.000006 m, got 0.000006",
  ],
  [
    "a cutoff beyond the bins",
    () => distributionFromCounts({ at4: 10, at6: 5 }, { from: 1e-6, to: 2e-4 }),
    "distributionFromCounts requires cutoffs.to to be between 0.000006 and 0.00015 m, got 0.0002",
  ],
  [
    "a negative mass",
    () => distributionFromMass({ mass: -1 }),
    "distributionFromMass requires mass to be at least 0 kg/m3, got -1",
  ],
  [
    "an unknown dust",
    () => distributionFromMass({ mass: 1, dust: "A9" as TestDust }),
    'distributionFromMass requires dust to be A2 fine or A3 medium or A4 coarse, got "A9"',
  ],
  [
    "a size outside the bins",
    () => countFrom(fuel, 2e-4),
    "countFrom requires size to be between 7e-7 and 0.00015 m, got 0.0002",
  ],
  [
    "a negative amount",
    () => mixDistributions([{ amount: -1, distribution: fuel }]),
    "mixDistributions requires parts[0].amount to be at least 0, got -1",
  ],
  [
    "a mix of nothing",
    () => mixDistributions([]),
    "mixDistributions requires the amounts together to be more than 0, got 0",
  ],
  [
    "a beta below 1",
    () => captureOf({ betas: [{ size: 1e-5, beta: 0.5 }] }),
    "captureOf requires betas[0].beta to be at least 1, got 0.5",
  ],
  [
    "betas that fall",
    () =>
      captureOf({
        betas: [
          { size: 25e-6, beta: 2 },
          { size: 10e-6, beta: 75 },
        ],
      }),
    "captureOf requires betas[0].beta to be at least 75, the beta of a smaller size (large particles are held at least as well), got 2",
  ],
  [
    "two betas at a size",
    () =>
      captureOf({
        betas: [
          { size: 1e-5, beta: 2 },
          { size: 1e-5, beta: 3 },
        ],
      }),
    "captureOf requires betas[1].size to be a size with no other beta, got 0.00001",
  ],
  [
    "a beta at a size without dust",
    () => captureOf({ betas: [{ size: 2e-4, beta: 2 }] }),
    "captureOf requires betas[0].size to be between 0.000001 and 0.0001 m, got 0.0002",
  ],
  [
    "no betas in a list",
    () => captureOf({ betas: [] }),
    "captureOf requires betas to be at least one beta, or left out, got a list of 0",
  ],
  [
    "a rating of no known kind",
    () => captureOf({ rating: { size: 1e-5, kind: "beta 5" as "beta 75" } }),
    'captureOf requires rating.kind to be nominal, absolute, beta 75, beta 200, beta 1000, got "beta 5"',
  ],
  ["a leak above 1", () => captureOf({ leak: 1.1 }), "captureOf requires leak to be between 0 and 1, got 1.1"],
  [
    "an unknown test dust",
    () => captureOf({ dust: "sand" as TestDust }),
    'captureOf requires dust to be A2 fine or A3 medium or A4 coarse, got "sand"',
  ],
  ["an efficiency of a beta below 1", () => betaEfficiency(0), "betaEfficiency requires beta to be at least 1, got 0"],
  [
    "a bank without flow",
    () => bankEfficiency([{ flow: 0, efficiency: none }]),
    "bankEfficiency requires the flows together to be more than 0 m3/s, got 0",
  ],
  [
    "a backward branch",
    () => bankEfficiency([{ flow: -1, efficiency: none }]),
    "bankEfficiency requires branches[0].flow to be at least 0 m3/s, got -1",
  ],
  [
    "an unknown law",
    () => loadingLaw("slow" as "cake", {}),
    'loadingLaw requires name to be cake, intermediate, standard, complete, cake-complete, cake-intermediate, complete-standard, intermediate-standard, cake-standard, got "slow"',
  ],
  [
    "a law without its constant",
    () => loadingLaw("cake", {}),
    "loadingLaw requires cake to be at least 0 per unit of load, got NaN",
  ],
  [
    "a constant the law has not",
    () => loadingLaw("cake", { cake: 1, complete: 1 }),
    "loadingLaw requires complete to be left out: a cake law has none, got 1",
  ],
  ["a negative load", () => resistanceRatio(cake, -1), "resistanceRatio requires load to be at least 0, got -1"],
  ["a NaN load", () => resistanceSlope(cake, Number.NaN), "resistanceSlope requires load to be at least 0, got NaN"],
  ["a ratio below 1", () => loadAtRatio(cake, 0.9), "loadAtRatio requires ratio to be at least 1, got 0.9"],
  [
    "no velocity",
    () => filtrateAt(cake, { initialVelocity: 0, time: 1 }),
    "filtrateAt requires initialVelocity to be more than 0 m/s, got 0",
  ],
  [
    "a negative filtrate",
    () => timeToFilter(cake, { initialVelocity: 1, filtrate: -1 }),
    "timeToFilter requires filtrate to be at least 0 m, got -1",
  ],
  ["a unit of nothing", () => rescaleLaw(cake, 0), "rescaleLaw requires oldPerNew to be more than 0, got 0"],
  [
    "a test without soil",
    () => capacityPoint({ ...capacity, soil: 0 }, 1e10),
    "capacityPoint requires soil to be more than 0 kg, got 0",
  ],
  [
    "a medium without resistance",
    () => capacityPoint(capacity, 0),
    "capacityPoint requires resistance to be more than 0 1/m3, got 0",
  ],
  [
    "one point for a pair",
    () => fitLoadingLaw("cake-complete", [{ load: 1, ratio: 2 }]),
    "fitLoadingLaw requires points to be 2 for a cake-complete law, got 1",
  ],
  [
    "a ratio of 1 to fit",
    () => fitLoadingLaw("cake", [{ load: 1, ratio: 1 }]),
    "fitLoadingLaw requires points[0].ratio to be more than 1, got 1",
  ],
  [
    "a ratio that falls with load",
    () =>
      fitLoadingLaw("cake-standard", [
        { load: 1, ratio: 3 },
        { load: 2, ratio: 2 },
      ]),
    "fitLoadingLaw requires the ratio at the larger load to be more than 3, got 2",
  ],
  [
    "two points at one load",
    () =>
      fitLoadingLaw("cake-standard", [
        { load: 1, ratio: 2 },
        { load: 1, ratio: 3 },
      ]),
    "fitLoadingLaw requires the larger load to be more than 1, got 1",
  ],
  ["a law to fit that is none", () => fitLoadingLaw("x" as "cake", []), "fitLoadingLaw requires name to be cake"],
  [
    "a clean drop of 0",
    () => assumedLoading({ make: "cellulose", cleanDrop: 0 }),
    "assumedLoading requires cleanDrop to be more than 0 Pa, got 0",
  ],
  [
    "an unknown make",
    () => assumedLoading({ make: "felt" as "cellulose", cleanDrop: 1 }),
    'assumedLoading requires make to be cellulose or glass or synthetic, got "felt"',
  ],
  [
    "a bed of no grains",
    () => cakeResistance({ porosity: 1, size: 1e-6 }),
    "cakeResistance requires porosity to be between 0.2 and 0.95, got 1",
  ],
  [
    "a cake without resistance",
    () => cakeLaw({ specificResistance: 0, mediumResistance: 1 }),
    "cakeLaw requires specificResistance to be more than 0 m/kg, got 0",
  ],
  [
    "a line that falls",
    () => cakeFromLine(run, { slope: -1, start: 0 }),
    "cakeFromLine requires the slope of time over filtrate to be more than 0 s/m6, got -1",
  ],
  [
    "one reading",
    () => fitCakeRun({ ...run, readings: [{ time: 1, filtrate: 1 }] }),
    "fitCakeRun requires readings to be at least two, got 1",
  ],
  [
    "two readings of one filtrate",
    () =>
      fitCakeRun({
        ...run,
        readings: [
          { time: 1, filtrate: 1 },
          { time: 2, filtrate: 1 },
        ],
      }),
    "cakeFromLine requires the slope of time over filtrate to be more than 0 s/m6, got NaN",
  ],
  [
    "an empty tank",
    () => tankBalance({ ...tank, volume: 0 }),
    "tankBalance requires volume to be more than 0 m3, got 0",
  ],
  [
    "a negative burn",
    () => tankBalance({ ...tank, burn: -1 }),
    "tankBalance requires burn to be at least 0 m3/s, got -1",
  ],
  [
    "a negative return",
    () => tankBalance({ ...tank, returned: -1 }),
    "tankBalance requires returned to be at least 0 m3/s, got -1",
  ],
  [
    "a negative relief",
    () => tankBalance({ ...tank, relief: -1 }),
    "tankBalance requires relief to be at least 0 m3/s, got -1",
  ],
  ["a time before the start", () => tankBalance(tank).tankAt(-1), "tankAt requires time to be at least 0 s, got -1"],
  ["a NaN time", () => tankBalance(tank).movedBy(Number.NaN), "movedBy requires time to be at least 0 s, got NaN"],
  [
    "negative water",
    () => freeWater({ total: -1, solubility: 1e-4, density: 830 }),
    "freeWater requires total to be at least 0 kg/m3, got -1",
  ],
  [
    "weightless fuel",
    () => freeWater({ total: 1, solubility: 1e-4, density: 0 }),
    "freeWater requires density to be more than 0 kg/m3, got 0",
  ],
  [
    "a separator that lets nothing pass",
    () => separationAt({ efficiency: 1, flow: 1 }, 1),
    "separationAt requires efficiency to be at least 0 and less than 1 (for a claim of all water, what the test could still have seen pass), got 1",
  ],
  [
    "a separator at no flow",
    () => separationAt(separation, 0),
    "separationAt requires flow to be more than 0 m3/s, got 0",
  ],
  [
    "water at no flow",
    () => waterThroughStages({ free: 1, flow: 0, stages: [] }),
    "waterThroughStages requires flow to be more than 0 m3/s, got 0",
  ],
  [
    "a bowl of no volume",
    () => bowlDrainInterval({ bowl: 0, separated: 1, flow: 1 }),
    "bowlDrainInterval requires bowl to be more than 0 m3, got 0",
  ],
  [
    "an absorber that does not swell",
    () => absorberLaw({ water: 0.1, ratio: 1 }),
    "absorberLaw requires ratio to be more than 1, got 1",
  ],
  [
    "a drop of no size",
    () => settlingSpeed({ size: 0, density: 998, fuel: diesel }),
    "settlingSpeed requires size to be more than 0 m, got 0",
  ],
  [
    "fuel without viscosity",
    () => settlingSpeed({ size: 1e-5, density: 998, fuel: { ...diesel, kinematicViscosity: 0 } }),
    "settlingSpeed requires fuel.kinematicViscosity to be more than 0 m2/s, got 0",
  ],
  [
    "particles of unknown mass in a cake",
    () => cakeResistance({ porosity: 0.5, size: 1e-6, density: 0 }),
    "cakeResistance requires density to be more than 0 kg/m3, got 0",
  ],
  [
    "a cake of no size",
    () => cakeResistance({ porosity: 0.5, size: 0 }),
    "cakeResistance requires size to be more than 0 m, got 0",
  ],
  [
    "a medium without resistance under a cake",
    () => cakeLaw({ specificResistance: 1, mediumResistance: 0 }),
    "cakeLaw requires mediumResistance to be more than 0 1/m, got 0",
  ],
  [
    "a cake run over no area",
    () => cakeFromLine({ ...run, area: 0 }, { slope: 1, start: 0 }),
    "cakeFromLine requires area to be more than 0 m2, got 0",
  ],
  [
    "a cake run under no drop",
    () => cakeFromLine({ ...run, drop: 0 }, { slope: 1, start: 0 }),
    "cakeFromLine requires drop to be more than 0 Pa, got 0",
  ],
  [
    "a cake run without viscosity",
    () => cakeFromLine({ ...run, dynamicViscosity: 0 }, { slope: 1, start: 0 }),
    "cakeFromLine requires dynamicViscosity to be more than 0 Pa s, got 0",
  ],
  [
    "a cake run without solids",
    () => cakeFromLine({ ...run, solids: 0 }, { slope: 1, start: 0 }),
    "cakeFromLine requires solids to be more than 0 kg/m3, got 0",
  ],
  [
    "a cake run that starts below nothing",
    () => cakeFromLine(run, { slope: 1, start: -1 }),
    "cakeFromLine requires the start of time over filtrate to be at least 0 s/m3, got -1",
  ],
  [
    "a capacity test without a rise",
    () => capacityPoint({ ...capacity, rise: 0 }, 1e10),
    "capacityPoint requires rise to be more than 0 Pa, got 0",
  ],
  [
    "a capacity test without flow",
    () => capacityPoint({ ...capacity, flow: 0 }, 1e10),
    "capacityPoint requires flow to be more than 0 m3/s, got 0",
  ],
  [
    "a capacity test without viscosity",
    () => capacityPoint({ ...capacity, dynamicViscosity: 0 }, 1e10),
    "capacityPoint requires dynamicViscosity to be more than 0 Pa s, got 0",
  ],
  [
    "a filtrate before the start",
    () => filtrateAt(cake, { initialVelocity: 1, time: -1 }),
    "filtrateAt requires time to be at least 0 s, got -1",
  ],
  [
    "a reading at no time",
    () =>
      fitCakeRun({
        ...run,
        readings: [
          { time: 1, filtrate: 1 },
          { time: 0, filtrate: 2 },
        ],
      }),
    "fitCakeRun requires readings[1].time to be more than 0 s, got 0",
  ],
  [
    "a reading of no filtrate",
    () =>
      fitCakeRun({
        ...run,
        readings: [
          { time: 1, filtrate: 0 },
          { time: 2, filtrate: 2 },
        ],
      }),
    "fitCakeRun requires readings[0].filtrate to be more than 0 m3, got 0",
  ],
  [
    "a load of 0 to fit",
    () => fitLoadingLaw("cake", [{ load: 0, ratio: 2 }]),
    "fitLoadingLaw requires points[0].load to be more than 0, got 0",
  ],
  [
    "a filtering time at no velocity",
    () => timeToFilter(cake, { initialVelocity: 0, filtrate: 1 }),
    "timeToFilter requires initialVelocity to be more than 0 m/s, got 0",
  ],
  [
    "an absorber that takes nothing up",
    () => absorberLaw({ water: 0, ratio: 2 }),
    "absorberLaw requires water to be more than 0 kg, got 0",
  ],
  [
    "a bowl that gains less than nothing",
    () => bowlDrainInterval({ bowl: 1, separated: -1, flow: 1 }),
    "bowlDrainInterval requires separated to be at least 0 kg/m3, got -1",
  ],
  [
    "a bowl under a backward flow",
    () => bowlDrainInterval({ bowl: 1, separated: 1, flow: -1 }),
    "bowlDrainInterval requires flow to be at least 0 m3/s, got -1",
  ],
  [
    "fuel without viscosity in a clean drop",
    () => cleanDropFactor({ fuel: 0, drop: 1 }),
    "cleanDropFactor requires fuel to be more than 0 Pa s, got 0",
  ],
  [
    "a solubility below none",
    () => freeWater({ total: 1, solubility: -1, density: 830 }),
    "freeWater requires solubility to be at least 0 kg/kg, got -1",
  ],
  [
    "a separator tested at no flow",
    () => separationAt({ efficiency: 0.5, flow: 0 }, 1),
    "separationAt requires stated.flow to be more than 0 m3/s, got 0",
  ],
  [
    "a separator that adds water",
    () => separationAt({ efficiency: -0.1, flow: 1 }, 1),
    "separationAt requires efficiency to be at least 0 and less than 1 (for a claim of all water, what the test could still have seen pass), got -0.1",
  ],
  [
    "a drop of no weight",
    () => settlingSpeed({ size: 1e-5, density: 0, fuel: diesel }),
    "settlingSpeed requires density to be more than 0 kg/m3, got 0",
  ],
  [
    "weightless fuel to settle in",
    () => settlingSpeed({ size: 1e-5, density: 998, fuel: { ...diesel, density: 0 } }),
    "settlingSpeed requires fuel.density to be more than 0 kg/m3, got 0",
  ],
  [
    "less than no water through stages",
    () => waterThroughStages({ free: -1, flow: 1, stages: [] }),
    "waterThroughStages requires free to be at least 0 kg/m3, got -1",
  ],
  ["a horizon of nothing", () => life({ ...year, horizon: 0 }), "life requires horizon to be more than 0 s, got 0"],
  ["a year without phases", () => life({ ...year, phases: [] }), "life requires phases to be one or more, got 0"],
  ["a life judged nowhere", () => life({ ...year, points: [] }), "life requires points to be one or more, got 0"],
  [
    "a phase of no length",
    () => life({ ...year, phases: [{ ...phase, duration: 0 }] }),
    "life requires phases[0].duration to be more than 0 s, got 0",
  ],
  [
    "less than no water in a phase",
    () => life({ ...year, phases: [{ ...phase, freeWater: -1 }] }),
    "life requires phases[0].freeWater to be at least 0 kg/m3, got -1",
  ],
  [
    "loads that do not make a whole",
    () => life({ ...year, phases: [{ ...phase, loads: [{ ...load, share: 0.9 }] }] }),
    "life requires phases[0].loads to be shares of 1 in all, got 0.9",
  ],
  [
    "less than no soil at the start",
    () => life({ ...year, elements: [{ ...element, soil: -1 }] }),
    "life requires a's soil to be at least 0 kg, got -1",
  ],
  [
    "less than no water at the start",
    () => life({ ...year, elements: [{ ...element, water: -1 }] }),
    "life requires a's water to be at least 0 kg, got -1",
  ],
  [
    "an element that keeps more water than comes",
    () => life({ ...year, elements: [{ ...element, separates: 1.1 }] }),
    "life requires a's separates to be between 0 and 1, got 1.1",
  ],
];

describe("soil refuses", () => {
  test.each(refused)("%s", (_, call, message) => {
    expect(call).toThrow(InputError);
    expect(call).toThrow(message);
  });
});
