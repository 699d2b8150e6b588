import type { Filter } from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";
import * as formulas from "../formulas/filters.js";
import { fittingDrop } from "../formulas/fittings.js";
import { velocity } from "../formulas/flow.js";
import { restrictionAtDrop } from "../formulas/limits.js";
import { dropSum } from "../formulas/path.js";
import { fuelDensity } from "../fuel/density.js";
import { fuelDynamicViscosity } from "../fuel/viscosity.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { quadraticOf, resistanceOf } from "./mediumSteps.js";
import { ofPart, type PartScene } from "./PartScene.js";

type FilterScene = PartScene<SystemFilter>;

/** Drop of a filter of the path: its medium, and what else its file states of it. */
export function systemFilterDrop(given: FilterScene, filter: Filter): Step {
  const { scene, path, flow: Q } = given;
  const mu = fuelDynamicViscosity(scene);
  const medium = worked(
    formulas.mediumDrop,
    { mu, R: resistanceOf(given, filter.medium, scene.setting.end), r: restrictionOf(given, filter), Q },
    { part: path },
  );
  const d = [medium, ...bodyDrops(given, filter)];
  return d.length === 1 ? medium : worked(dropSum, { d }, { part: path, name: "drop of the filter" });
}

function bodyDrops(given: FilterScene, filter: Filter): Step[] {
  const { scene, path, part, flow: Q } = given;
  const B = quadraticOf(given, filter.medium);
  const drops: Step[] = [];
  if (part.pleats) {
    const C = channelsOf(given, filter);
    drops.push(worked(formulas.channelDrop, { mu: fuelDynamicViscosity(scene), C, Q }, { part: path }));
  }
  if (B) drops.push(worked(formulas.inertialDrop, { rho: fuelDensity(scene), B, Q }, { part: path }));
  if (part.housing) {
    const { k, port } = part.housing;
    const D = ofPart(given, "housing.port", { name: "bore of the port", value: port, unit: "m", kind: "bore" });
    drops.push(
      worked(
        fittingDrop,
        {
          n: inWords("one body", { name: "how many", value: 1, unit: "1", kind: "plain" }),
          K: ofPart(given, "housing.k", { name: "loss in velocity heads", value: k, unit: "1", kind: "plain" }),
          rho: fuelDensity(scene),
          v: worked(velocity, { Q, D }),
        },
        { part: path, name: "drop of the body" },
      ),
    );
  }
  return drops;
}

function channelsOf(given: FilterScene, { channels }: Filter): Step {
  const { depth = Number.NaN, gap = Number.NaN, area = Number.NaN } = given.part.pleats ?? {};
  return worked(
    formulas.pleatResistance,
    {
      h: ofPart(given, "pleats.depth", { name: "depth of a fold", value: depth, unit: "m", kind: "bore" }),
      g: ofPart(given, "pleats.gap", { name: "gap between two walls", value: gap, unit: "m", kind: "bore" }),
      A: ofPart(given, "area", { name: "area of the medium", value: area, unit: "m2", kind: "area" }),
    },
    { value: channels },
  );
}

/** Resistance of an element over its clean one. */
function restrictionOf(given: FilterScene, filter: Filter): Step {
  const { scene, part, path } = given;
  const { elements, restrictions } = scene.setting;
  const name = "resistance now over the clean one";
  const filled = restrictions?.get(part.name);
  if (filled !== undefined) {
    return inWords("as the soil on it makes it", { name, value: filled, unit: "1", kind: "plain", part: path });
  }
  const plain = { name, value: filter.restriction, unit: "1", kind: "plain" } as const;
  if (elements === "at change" && part.terminalDrop !== undefined) return dueRestriction(given, filter);
  if (elements !== "clean" && part.restriction !== undefined) return ofPart(given, "restriction", plain);
  return inWords(elements === "clean" ? "a clean element" : "no soil is stated", { ...plain, part: path });
}

/** Restriction of an element that shows its terminal drop at the file's own temperature. */
function dueRestriction(given: FilterScene, filter: Filter): Step {
  const { scene, part, path } = given;
  const plain = {
    name: "resistance over the clean one when due",
    value: filter.restriction,
    unit: "1",
    kind: "plain",
  } as const;
  const clean = scene.at({ temperature: null, at: null, pumped: null, elements: "clean", passage: "smooth" });
  const due = scene.kept(`due flow ${part.name}`, () => clean.flowThrough(part.name));
  if (filter.restriction === 1 || due === null) {
    return inWords("it costs that much clean already, or carries no flow", { ...plain, part: path });
  }
  const Q = inWords("its own at the demand with all elements clean, at the file's own temperature", {
    name: "flow through it",
    value: Math.abs(due),
    unit: "m3/s",
    kind: "flow",
  });
  const then = { ...given, scene: clean, flow: Q };
  return worked(
    restrictionAtDrop,
    {
      p_t: ofPart(given, "terminal drop", {
        name: "terminal drop",
        value: part.terminalDrop ?? Number.NaN,
        unit: "Pa",
        kind: "pressure",
      }),
      d: systemFilterDrop(then, { ...filter, restriction: 1 }),
      mu: fuelDynamicViscosity(clean),
      R: resistanceOf(then, filter.medium, scene.setting.end),
      Q,
    },
    { value: filter.restriction, name: plain.name },
  );
}
