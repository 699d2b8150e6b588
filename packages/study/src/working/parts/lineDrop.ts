import { colebrook, LAMINAR_END, type Passage, TURBULENT_START } from "@thirstline/core";
import { reynolds, velocity } from "../formulas/flow.js";
import { colebrookSide, darcyDrop, frictionFactor, laminarDrop } from "../formulas/lines.js";
import * as passage from "../formulas/passage.js";
import { fuelDensity } from "../fuel/density.js";
import { fuelDynamicViscosity, fuelViscosity } from "../fuel/viscosity.js";
import type { PartPath, Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromSource, inWords, searched, worked } from "../worked.js";

/** A line as its friction sees it. */
export interface Pipe {
  readonly scene: Scene;
  readonly path: PartPath;
  readonly length: Step;
  readonly bore: Step;
  readonly roughness: Step;
  readonly flow: Step;
}

const BORDERS = "F. M. White, Fluid Mechanics (7th ed. 2011), section 6.1; from memory";

/** Roundings in a Reynolds number. */
const ROUNDING = 1e-12;

/** Drop of a line at its flow, by the law of its regime. */
export function lineDrop(pipe: Pipe): Step {
  const { scene, path, length: L, bore: D, flow: Q } = pipe;
  const Re = worked(reynolds, { Q, D, nu: fuelViscosity(scene) }, { part: path });
  // A ceiling may stand on the very step, where a rounding either way must not change the law.
  if (Re.value <= LAMINAR_END * (1 + ROUNDING)) {
    return worked(laminarDrop, { mu: fuelDynamicViscosity(scene), L, Q, D }, { part: path });
  }
  if (Re.value < turbulentFrom(scene.setting.passage)) return betweenDrop(pipe, Re);
  const f = worked(frictionFactor, { x: rootAt(pipe, Re) }, { part: path });
  const v = worked(velocity, { Q, D }, { part: path });
  return worked(darcyDrop, { f, L, D, rho: fuelDensity(scene), v }, { part: path });
}

function turbulentFrom(reading: Passage): number {
  return reading === "early" ? LAMINAR_END : TURBULENT_START;
}

/** One over the root of the friction factor, with the equation it satisfies. */
function rootAt({ bore: D, roughness: epsilon }: Pipe, Re: Step): Step {
  const name = "one over the root of the friction factor";
  const plain = {
    name,
    value: 1 / Math.sqrt(colebrook(Re.value, epsilon.value / D.value)),
    unit: "1",
    kind: "plain",
  } as const;
  const itself = inWords("as found", plain);
  return searched("the root of the Colebrook–White equation, found by Halley's method", plain, [
    {
      words: "put back into the right side of the equation, it comes out again",
      left: itself,
      relation: "=",
      right: worked(colebrookSide, { epsilon, D, x: itself, Re }, { name: "right side of the equation" }),
    },
  ]);
}

/** Drop where no law holds: the smooth join of the laminar and the turbulent law. */
function betweenDrop(pipe: Pipe, Re: Step): Step {
  const { scene, path, length: L, bore: D, roughness: epsilon, flow: Q } = pipe;
  const border = (name: string, value: number) => fromSource(BORDERS, { name, value, unit: "1", kind: "plain" });
  const start = border("Reynolds number at which laminar flow ends", LAMINAR_END);
  const end = border("Reynolds number from which the flow is turbulent", TURBULENT_START);
  const x = rootAt(pipe, end);
  const G = worked(passage.passageNumber, {
    Re_1: start,
    w: inWords("4000 less 2300", {
      name: "width of the passage as a Reynolds number",
      value: TURBULENT_START - LAMINAR_END,
      unit: "1",
      kind: "plain",
    }),
    t: worked(passage.passageShare, { Re, Re_1: start, Re_2: end }),
    G_2: worked(passage.frictionNumber, { Re: end, x }),
    s: worked(passage.frictionSlope, { Re: end, x, epsilon, D }),
  });
  return worked(passage.passageDrop, { Q, rho: fuelDensity(scene), nu: fuelViscosity(scene), L, G, D }, { part: path });
}
