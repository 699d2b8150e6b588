import {
  absorberLaw,
  assumedLoading,
  betaEfficiency,
  bowlDrainInterval,
  cakeLaw,
  cakeResistance,
  capacityPoint,
  codeOfDistribution,
  convertSize,
  countFrom,
  countsPerMl,
  distributionFromCode,
  distributionFromCounts,
  distributionFromMass,
  filtrateAt,
  fitLoadingLaw,
  freeWater,
  loadAtRatio,
  loadingLaw,
  massOf,
  parseCode,
  plugsAt,
  printCode,
  resistanceRatio,
  resistanceSlope,
  sauterSize,
  separationAt,
  settlingSpeed,
  timeToFilter,
} from "@thirstline/core";
import { expect, test } from "vitest";

// The examples in the doc comments, with the figures that stand there.

const dust = distributionFromMass({ mass: 1e-3 });
const counted = distributionFromCounts({ at4: 2500, at6: 640, at14: 80 });
const coded = distributionFromCode(parseCode("18/16/13"));
const intermediate = loadingLaw("intermediate", { intermediate: 10 });
const water = freeWater({ total: 0.15, solubility: 92.8e-6, density: 830 });
const complete = fitLoadingLaw("complete", [{ load: 0.04, ratio: 18.5 }]);
const drop = settlingSpeed({ size: 1e-4, density: 998, fuel: { density: 825, kinematicViscosity: 3e-6 } });

const test4 = { soil: 0.04, rise: 35e3, flow: 5.556e-5, dynamicViscosity: 2.49e-3 };

test.each([
  ["countFrom", countFrom(dust, 10e-6), 8.21e7, 0.01e7],
  ["countsPerMl at4", countsPerMl(dust).at4, 945.7, 0.05],
  ["countsPerMl at6", countsPerMl(dust).at6, 402.9, 0.05],
  ["countsPerMl at14", countsPerMl(dust).at14, 28.18, 0.005],
  ["distributionFromCounts", counted.known ? massOf(counted) : 0, 4.1e-3, 0.005e-3],
  ["distributionFromCounts, share above", counted.known ? counted.extrapolated.above : 0, 0.48, 0.005],
  ["distributionFromCode", coded.known ? massOf(coded) : 0, 4.1e-3, 0.005e-3],
  ["sauterSize", sauterSize("A3 medium"), 6.895e-6, 0.0005e-6],
  ["betaEfficiency", betaEfficiency(75), 0.9866666666666667, 1e-16],
  ["convertSize", convertSize(10e-6, "ISO 4402", "um(c)"), 9.8e-6, 1e-20],
  ["resistanceRatio", resistanceRatio(intermediate, 0.04), 1.4918, 0.00005],
  ["resistanceSlope", resistanceSlope(loadingLaw("cake", { cake: 25 }), 0.04), 25, 0],
  ["loadAtRatio", loadAtRatio(loadingLaw("cake", { cake: 25 }), 2), 0.04, 0],
  ["plugsAt", plugsAt(loadingLaw("complete", { complete: 20 })), 0.05, 0],
  [
    "filtrateAt",
    filtrateAt(loadingLaw("intermediate", { intermediate: 1.2 }), { initialVelocity: 1e-3, time: 700 }),
    0.5081,
    0.00005,
  ],
  ["timeToFilter", timeToFilter(loadingLaw("cake", { cake: 40 }), { initialVelocity: 1e-3, filtrate: 0.1 }), 300, 1e-9],
  ["capacityPoint", capacityPoint(test4, 1.446e10).ratio, 18.5, 0.05],
  ["fitLoadingLaw", complete.known ? plugsAt(complete.law) : 0, 0.0423, 0.00005],
  ["assumedLoading", assumedLoading({ make: "cellulose", cleanDrop: 2e3 }).middle.intermediate, 103.4, 0.05],
  ["cakeResistance", cakeResistance({ porosity: 0.5, size: 6.85e-6 }), 5.79e9, 0.005e9],
  ["cakeLaw", cakeLaw({ specificResistance: 5.79e9, mediumResistance: 1.3e10 }).cake, 0.445, 0.0005],
  ["freeWater dissolved", water.dissolved, 0.077, 0.00005],
  ["freeWater free", water.free, 0.073, 0.00005],
  ["separationAt twice the flow", separationAt({ efficiency: 0.96, flow: 5e-5 }, 1e-4), 0.8, 1e-15],
  ["separationAt half the flow", separationAt({ efficiency: 0.96, flow: 5e-5 }, 2.5e-5), 0.998, 0.0005],
  ["bowlDrainInterval, hours", bowlDrainInterval({ bowl: 2e-4, separated: 0.05, flow: 5.5e-5 }) / 3600, 20.2, 0.05],
  ["absorberLaw", plugsAt(absorberLaw({ water: 0.05, ratio: 4 })), 0.1, 1e-15],
  ["settlingSpeed", drop.known ? drop.speed : 0, 3.808e-4, 0.0005e-4],
  ["settlingSpeed, minutes for a metre", drop.known ? 1 / drop.speed / 60 : 0, 44, 0.5],
])("the example of %s holds", (_, got, printed, rounding) => {
  expect(Math.abs(got - printed)).toBeLessThanOrEqual(rounding);
});

test("the example of codeOfDistribution holds", () => {
  expect(printCode(codeOfDistribution(dust))).toBe("17/16/12");
});
