import { type LoadingLaw, resistanceRatio } from "@thirstline/core";
import { filterAt, filtersWithPlaces } from "../figures/filterAt.js";
import * as formulas from "../formulas/loading.js";
import { resistanceOf } from "../parts/mediumSteps.js";
import { ofPart } from "../parts/PartScene.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import type { LifeScene } from "./lifeFacts.js";

/** How an element's resistance grows with the water it keeps: its constant, and the ratio that water makes. */
export function waterRatio(life: LifeScene, name: string, law: LoadingLaw, m: Step): Step {
  const value = resistanceRatio(law, m.value);
  return worked(formulas.ratios.standard, { K: swelling(life, name, law), m }, { name: "ratio by water", value });
}

/** Constant of an absorber's swelling, from the water and restriction its file states. */
export function swelling({ scene }: LifeScene, name: string, law: LoadingLaw): Step {
  const place = filtersWithPlaces(scene).find(({ part }) => part.name === name);
  const found = place && filterAt(scene, place.path);
  const absorbs = place?.part.absorbs;
  const title = "constant of its swelling";
  const more = { name: title, value: law.standard };
  if (!place || !found || !absorbs) return inWords("not stated", { ...more, unit: "1/kg" });
  const of = (own: string, plain: Parameters<typeof ofPart>[2]) =>
    ofPart({ scene, path: place.path }, `absorbs.${own}`, plain);
  const m = of("water", { name: "water it took up", value: absorbs.water, unit: "kg", kind: "soil" });
  if ("restriction" in absorbs) {
    const r = of("restriction", {
      name: "resistance over the clean one then",
      value: absorbs.restriction,
      unit: "1",
      kind: "plain",
    });
    return worked(formulas.fits.standard, { r, m }, more);
  }
  const r = worked(formulas.testRatio, {
    p: of("rise", { name: "rise of the drop then", value: absorbs.rise, unit: "Pa", kind: "pressure" }),
    mu: of("viscosity", {
      name: "dynamic viscosity of the fluid",
      value: absorbs.dynamicViscosity,
      unit: "Pa s",
      kind: "dynamic viscosity",
    }),
    R: resistanceOf(found.given, found.core.medium, "middle"),
    Q: of("flow", { name: "flow then", value: absorbs.flow, unit: "m3/s", kind: "flow" }),
  });
  return worked(formulas.fits.standard, { r, m }, more);
}
