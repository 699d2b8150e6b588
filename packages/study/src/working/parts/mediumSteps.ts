import { type Band, type Filter, fibreLaws } from "@thirstline/core";
import type { SystemFilter, SystemMedium } from "@thirstline/spec/system";
import { fibreResistance, geometricMean, ratingResistance } from "../formulas/estimates.js";
import { higherResistance, lowerResistance } from "../formulas/fibres.js";
import * as formulas from "../formulas/filters.js";
import type { Step } from "../Step.js";
import { fromSource, worked } from "../worked.js";
import { fibreLawWords, fibrePermeability } from "./fibreSteps.js";
import { fromRounding, leftByRounding, slopeOf, testedResistance, testOf } from "./flowTestSteps.js";
import { ofPart, type PartScene } from "./PartScene.js";

type FilterScene = PartScene<SystemFilter>;

/** Resistance of the clean medium at an end of what is known of it. */
export function resistanceOf(given: FilterScene, medium: Filter["medium"], end: keyof Band): Step {
  const { scene, path } = given;
  return scene.step(`resistance ${JSON.stringify(path)} ${end}`, () => ({
    ...resistanceBy(given, given.part.medium, end),
    value: medium.linear[end],
    part: path,
  }));
}

function resistanceBy(given: FilterScene, medium: SystemMedium, end: keyof Band): Step {
  switch (medium.by) {
    case "flow test":
      return testedResistance(given, medium);
    case "medium":
      return worked(formulas.geometryResistance, {
        ...sheetOf(given, "medium", medium),
        k: ofPart(given, "medium.permeability", { name: "permeability", value: medium.permeability, unit: "m2" }),
      });
    case "air test":
      return airTested(given, medium);
    case "rating":
      return rated(given, medium, end);
    case "fibre":
      return ofFibres(given, medium, end);
  }
}

/** Area and thickness of a medium as they stand under a key of the file. */
function sheetOf(given: FilterScene, key: string, sheet: { readonly area: number; readonly thickness: number }) {
  return {
    t: ofPart(given, `${key}.thickness`, {
      name: "thickness of the medium",
      value: sheet.thickness,
      unit: "m",
      kind: "bore",
    }),
    A: ofPart(given, `${key}.area`, { name: "area of the medium", value: sheet.area, unit: "m2", kind: "area" }),
  };
}

/** Quadratic term of the medium; null where it has none. */
export function quadraticOf(given: FilterScene, medium: Filter["medium"]): Step | null {
  const stated = given.part.medium;
  const value = medium.quadratic;
  if (value === 0) return null;
  if (stated.by === "medium" && stated.inertia !== undefined) {
    const name = "inertial coefficient";
    const beta = ofPart(given, "medium.inertia", { name, value: stated.inertia, unit: "1/m" });
    return worked(formulas.geometryQuadratic, { ...sheetOf(given, "medium", stated), beta }, { value });
  }
  if (stated.by !== "flow test") return null;
  if (leftByRounding(stated).slope)
    return { ...fromRounding("quadratic term of the medium and its body", "1/m4"), value };
  return worked(formulas.testQuadratic, { s: slopeOf(given, stated), rho: testOf(given, stated).rho }, { value });
}

function airTested(given: FilterScene, medium: Extract<SystemMedium, { by: "air test" }>): Step {
  const key = "air test";
  return worked(formulas.airTestResistance, {
    S: ofPart(given, `${key}.area`, { name: "area of the sample", value: medium.sampleArea, unit: "m2", kind: "area" }),
    dp: ofPart(given, `${key}.pressure`, {
      name: "pressure of the air",
      value: medium.pressure,
      unit: "Pa",
      kind: "pressure",
    }),
    mu_a: fromSource("handbook value at 20 °C, from memory", {
      name: "viscosity of air",
      value: 1.81e-5,
      unit: "Pa s",
      kind: "dynamic viscosity",
    }),
    Q: ofPart(given, `${key}.flow`, { name: "air through the sample", value: medium.flow, unit: "m3/s", kind: "flow" }),
    A: ofPart(given, "area", { name: "area of the medium", value: medium.area, unit: "m2", kind: "area" }),
  });
}

/** Ends of what a rating leaves open, as core takes them: common practice, but porosity from a handbook. */
const OPEN = {
  low: { pore: { nominal: 4, rated: 2 }, porosity: 0.95, tortuosity: 1 },
  high: { pore: { nominal: 1, rated: 1 }, porosity: 0.6, tortuosity: 1.5 },
} as const;

function rated(given: FilterScene, medium: Extract<SystemMedium, { by: "rating" }>, end: keyof Band): Step {
  if (end === "middle")
    return worked(geometricMean, { a: rated(given, medium, "low"), b: rated(given, medium, "high") });
  const { pore, porosity, tortuosity } = OPEN[end];
  const PRACTICE = "common practice, no source";
  const taken = (source: string, name: string, value: number) =>
    fromSource(source, { name, value, unit: "1", kind: "plain" });
  const x = { name: "rated size", value: medium.size, unit: "m", kind: "particle size" } as const;
  return worked(
    ratingResistance,
    {
      ...sheetOf(given, "rating", medium),
      T: taken(PRACTICE, "tortuosity, path over thickness", tortuosity),
      e: taken("A. Hutten, Handbook of Nonwoven Filter Media (2007); from memory", "porosity", porosity),
      m: taken(PRACTICE, "mean flow pore over the rated size", pore[medium.kind === "nominal" ? "nominal" : "rated"]),
      x: ofPart(given, "rating.size", x),
    },
    { name: `resistance of the clean medium, ${end} end` },
  );
}

function ofFibres(given: FilterScene, medium: Extract<SystemMedium, { by: "fibre" }>, end: keyof Band): Step {
  if (end === "middle")
    return worked(geometricMean, { a: ofFibres(given, medium, "low"), b: ofFibres(given, medium, "high") });
  const size = { name: "fibre diameter", value: medium.diameter, unit: "m", kind: "particle size" } as const;
  const solidity = {
    name: "solidity, the share that is fibre",
    value: medium.solidity,
    unit: "1",
    kind: "plain",
  } as const;
  const c = ofPart(given, "fibre.solidity", solidity);
  const R = (Object.keys(fibreLaws) as (keyof typeof fibreLaws)[]).map((law) =>
    worked(
      fibreResistance,
      { ...sheetOf(given, "fibre", medium), k: fibrePermeability(law, c), d: ofPart(given, "fibre.diameter", size) },
      { name: `resistance by ${fibreLawWords[law]}` },
    ),
  );
  return worked(end === "low" ? lowerResistance : higherResistance, { R });
}
