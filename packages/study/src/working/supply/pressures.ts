import * as pathLaws from "../formulas/path.js";
import * as formulas from "../formulas/pumps.js";
import { deliveryWay } from "../path/deliveryWay.js";
import { suctionWay } from "../path/suctionWay.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { worked } from "../worked.js";
import { airPressure } from "./air.js";
import { openRise, pumpRise, riseOnCurve, suctionFlow } from "./pump.js";
import { vacuumHere } from "./vacuum.js";

/** Vacuum at the pump's inlet; null where nothing passes. */
export function vacuum(scene: Scene): Step | null {
  return vacuumHere(scene, suctionFlow(scene));
}

/** Pressure of the fuel's motion at the pump's inlet. */
export function velocityHead(scene: Scene): Step {
  return suctionWay(scene, suctionFlow(scene)).kinetic;
}

/** Absolute pressure at the pump's outlet; null where it is not known. */
export function outlet(scene: Scene): Step | null {
  const V = vacuum(scene);
  const p = V && pumpRise(scene, V);
  return V && p && worked(pathLaws.outletPressure, { p_a: airPressure(scene), V, p });
}

/** Gauge pressure at the injection pump or, with no pump, at the engine; null where it cannot be known. */
export function feedPressure(scene: Scene): Step | null {
  const V = vacuum(scene);
  const value = scene.model.state(scene.demand).feedPressure;
  if (!V || value === null || !Number.isFinite(value)) return null;
  const p = pumpRise(scene, V);
  return p && feedOf(scene, V, p, value);
}

/** Feed pressure with the pump at the rise its relief or curve allows: what its limit is judged by. */
export function feedWithReliefOpen(scene: Scene): Step | null {
  const V = vacuum(scene);
  const { pump } = scene.built;
  if (!V || pump.kind === "pulse") return null;
  if (pump.kind === "none") return feedOf(scene, V, V, undefined);
  const p =
    pump.kind === "curve" ? riseOnCurve(scene, scene.model.state(scene.demand).pumpRise ?? 0) : openRise(pump, V);
  return feedOf(scene, V, p, undefined);
}

function feedOf(scene: Scene, V: Step, p: Step, value: number | undefined): Step | null {
  const more = {
    name: "feed pressure",
    scale: scene.supply.ambientPressure,
    ...(value === undefined ? {} : { value }),
  };
  if (scene.built.pump.kind === "none") return worked(formulas.gravityFeed, { V }, more);
  const { costs, kinetic } = deliveryWay(scene);
  const d = costs.map((cost) => cost());
  if (!d.every((step) => step !== null)) return null;
  if (d.length === 0) return worked(formulas.feedAtPump, { p, V }, more);
  return worked(formulas.feedPressure, { p, V, d, p_k: kinetic }, more);
}

/** Rise that the feed limit asks of the pump. */
export function neededRise(scene: Scene, V: Step, p_l: Step): Step | null {
  const { costs, kinetic } = deliveryWay(scene);
  const d = costs.map((cost) => cost());
  if (!d.every((step) => step !== null)) return null;
  if (d.length === 0) return worked(formulas.neededAtPump, { p_l, V });
  return worked(formulas.neededRise, { p_l, d, p_k: kinetic, V });
}
