import {
  ASSUMED_RISE,
  assumedCapacities,
  type CombinedLawName,
  capacityPoint,
  type LoadingLaw,
  lawConstants,
  resistanceRatio,
  type SingleLawName,
} from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";
import { areaOf, assumedMakeOf } from "../../life/Guess.js";
import { filterAt, filtersWithPlaces } from "../figures/filterAt.js";
import * as formulas from "../formulas/loading.js";
import { resistanceOf } from "../parts/mediumSteps.js";
import { ofPart } from "../parts/PartScene.js";
import type { PartPath, Step } from "../Step.js";
import { fromSource, inWords, searched, worked } from "../worked.js";
import { lettersOf } from "./lettersOf.js";
import type { LifeScene } from "./lifeFacts.js";

type Test = NonNullable<SystemFilter["capacityTest"]>;

/** A constant smaller than this share of its partner is rounding, by which the pair's formula must not divide. */
const NOTHING = 1e-10;

/** Resistance over clean that an element's law makes of soil on it. */
export function soilRatio(life: LifeScene, name: string, law: LoadingLaw, m: Step): Step {
  const value = resistanceRatio(law, m.value);
  const constants = lawConstants[law.name];
  const [first, second] = constants;
  if (second === undefined && first !== undefined) {
    return worked(formulas.ratios[first], { K: constantOf(life, name, law, first), m }, { value });
  }
  const [inner, outer] = lettersOf(law.name as CombinedLawName);
  // A pair of which one constant is nothing is the other law alone; so are its formulas.
  if (isAlone(law, inner, outer)) {
    return worked(formulas.ratios[inner], { K: constantOf(life, name, law, inner), m }, { value });
  }
  const pair = formulas.pairRatios[law.name as CombinedLawName];
  return worked(pair, { A: constantOf(life, name, law, inner), B: constantOf(life, name, law, outer), m }, { value });
}

function isAlone(law: LoadingLaw, inner: SingleLawName, outer: SingleLawName): boolean {
  return law[outer] <= NOTHING * law[inner];
}

function constantOf(life: LifeScene, name: string, law: LoadingLaw, which: SingleLawName): Step {
  const value = law[which];
  const title = `constant of the ${which === "cake" ? "cake" : `${which} blocking`} law`;
  const points = testedPoints(life, name);
  const [point] = points.slice(-1);
  if (lawConstants[law.name].length === 1 && point) {
    return worked(formulas.fits[which], point, { name: title, value });
  }
  const plain = { name: title, value, unit: "1/kg" } as const;
  const [inner, outer] = lettersOf(law.name as CombinedLawName);
  const found = (own: SingleLawName) =>
    inWords("as found", { name: `constant of ${own}`, value: law[own], unit: "1/kg" });
  const checks = points.slice(-2).map(({ m, r }) => ({
    words: "with both constants the law passes the tested point",
    left: isAlone(law, inner, outer)
      ? worked(formulas.ratios[inner], { K: found(inner), m })
      : worked(formulas.pairRatios[law.name as CombinedLawName], { A: found(inner), B: found(outer), m }),
    relation: "=" as const,
    right: r,
  }));
  return searched("found by halving, so that the law passes both tested points", plain, checks);
}

/** The tested points of an element, the lighter first; or the handbook's. */
function testedPoints(life: LifeScene, name: string): { readonly m: Step; readonly r: Step }[] {
  const place = filtersWithPlaces(life.scene).find(({ part }) => part.name === name);
  const found = place && filterAt(life.scene, place.path);
  if (!place || !found) return [];
  const { part, path } = place;
  const R = resistanceOf(found.given, found.core.medium, "middle");
  const tests = [part.lighterCapacityTest, part.capacityTest].filter((test) => test !== undefined);
  if (tests.length > 0) {
    return tests.map((test, at) =>
      tested(life, path, { test, key: tests.length > 1 ? `capacity test[${at}]` : "capacity test", R }),
    );
  }
  return handbook(life, part, path, R);
}

function tested(
  { scene }: LifeScene,
  path: PartPath,
  { test, key, R }: { readonly test: Test; readonly key: string; readonly R: Step },
): { readonly m: Step; readonly r: Step } {
  const of = (own: string, plain: Parameters<typeof ofPart>[2]) => ofPart({ scene, path }, `${key}.${own}`, plain);
  const r = worked(
    formulas.testRatio,
    {
      p: of("rise", { name: "rise of the drop in the test", value: test.rise, unit: "Pa", kind: "pressure" }),
      mu: of("viscosity", {
        name: "dynamic viscosity of the test fluid",
        value: test.dynamicViscosity,
        unit: "Pa s",
        kind: "dynamic viscosity",
      }),
      R,
      Q: of("flow", { name: "flow in the test", value: test.flow, unit: "m3/s", kind: "flow" }),
    },
    { value: capacityPoint(test, R.value).ratio },
  );
  return { m: of("soil", { name: "soil in the test", value: test.soil, unit: "kg", kind: "soil" }), r };
}

function handbook(
  { scene }: LifeScene,
  part: SystemFilter,
  path: PartPath,
  R: Step,
): { readonly m: Step; readonly r: Step }[] {
  const make = assumedMakeOf(part);
  const area = areaOf(part);
  if (make === null || area === undefined) return [];
  const { least, most } = assumedCapacities[make];
  const BOOKS = "filter handbooks, from memory";
  const PRACTICE = "common practice, no source";
  const A = ofPart({ scene, path }, "area", { name: "area of the medium", value: area, unit: "m2", kind: "area" });
  const m = worked(formulas.handbookCapacity, {
    A,
    a: fromSource(BOOKS, { name: `least, ${make}`, value: least, unit: "kg/m2" }),
    b: fromSource(BOOKS, { name: `most, ${make}`, value: most, unit: "kg/m2" }),
  });
  const r = worked(formulas.handbookRatio, {
    p: fromSource(BOOKS, {
      name: "rise at which handbooks take it",
      value: ASSUMED_RISE,
      unit: "Pa",
      kind: "pressure",
    }),
    mu: fromSource(PRACTICE, {
      name: "dynamic viscosity taken",
      value: 2.5e-3,
      unit: "Pa s",
      kind: "dynamic viscosity",
    }),
    R,
    u: fromSource(PRACTICE, { name: "face velocity taken", value: 2e-4, unit: "m/s" }),
    A,
  });
  return [{ m, r }];
}
