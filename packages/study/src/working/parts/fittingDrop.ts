import { twoKConstants } from "@thirstline/core";
import type { SystemFitting, SystemLine } from "@thirstline/spec/system";
import { fittingDrop as constantDrop, equivalentLength, twoKDrop } from "../formulas/fittings.js";
import { fuelDensity } from "../fuel/density.js";
import { fuelViscosity } from "../fuel/viscosity.js";
import type { Step } from "../Step.js";
import { fromSource, worked } from "../worked.js";
import { boreOf, velocityIn } from "./boreSteps.js";
import { lineDrop } from "./lineDrop.js";
import { ofPart, type PartScene } from "./PartScene.js";

const HOOPER = "W. B. Hooper, Chem. Eng. 88 (24 Aug 1981) 96; from memory";
const WALLS =
  "F. M. White, Fluid Mechanics (7th ed.), table 6.1, and L. F. Moody, Trans. ASME 66 (1944) 671, as reproduced publicly";

/** Drop of a line of the path. */
export function systemLineDrop(given: PartScene<SystemLine>): Step {
  const { scene, path, part, flow } = given;
  const length = ofPart(given, "length", { name: "length", value: part.length, unit: "m", kind: "length" });
  return lineDrop({ scene, path, flow, length, bore: boreOf(given), roughness: roughnessOf(given, part.roughness) });
}

/** Roughness of a wall: stated, or published for its surface. */
function roughnessOf(given: PartScene, value: number): Step {
  const { part, path } = given;
  const surface = "surface" in part ? part.surface : undefined;
  const name = surface === undefined ? "roughness of the wall" : `roughness of the wall, ${surface}`;
  const plain = { name, value, unit: "m", kind: "bore" } as const;
  return surface === undefined ? ofPart(given, "roughness", plain) : fromSource(WALLS, { ...plain, part: path });
}

/** Drop of fittings of the path. */
export function systemFittingDrop(given: PartScene<SystemFitting>): Step {
  const { scene, path, part } = given;
  const { loss } = part;
  const n = ofPart(given, "count", { name: "how many alike", value: part.count, unit: "1", kind: "plain" });
  const D = boreOf(given);
  const fuel = { rho: fuelDensity(scene), v: velocityIn(given) };
  switch (loss.by) {
    case "k": {
      const K = ofPart(given, "k", { name: "loss of one, in velocity heads", value: loss.k, unit: "1", kind: "plain" });
      return worked(constantDrop, { n, K, ...fuel }, { part: path });
    }
    case "two-K": {
      const { k1, kInfinity } = twoKConstants[loss.row];
      const row = (name: string, value: number) =>
        fromSource(HOOPER, { name: `${name}, ${loss.row}`, value, unit: "1", kind: "plain" });
      return worked(
        twoKDrop,
        {
          n,
          ...fuel,
          K_1: row("loss at Reynolds number 1", k1),
          nu: fuelViscosity(scene),
          D,
          K_i: row("loss at a high Reynolds number", kInfinity),
          d_1: fromSource("definition", { name: "one inch", value: 0.0254, unit: "m", kind: "bore" }),
        },
        { part: path },
      );
    }
    case "equivalent length": {
      const name = "equivalent length of one, in bores";
      const N = ofPart(given, "equivalent length", { name, value: loss.bores, unit: "1", kind: "plain" });
      const length = worked(equivalentLength, { n, N, D }, { part: path });
      return lineDrop({
        scene,
        path,
        flow: given.flow,
        length,
        bore: D,
        roughness: roughnessOf(given, loss.roughness),
      });
    }
  }
}
