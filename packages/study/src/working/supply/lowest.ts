import { lowestPressure } from "../formulas/path.js";
import { suctionWay } from "../path/suctionWay.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { worked } from "../worked.js";
import { suctionFlow } from "./pump.js";

/** Lowest static pressure anywhere on the suction side; null where nothing passes. */
export function lowest(scene: Scene): Step | null {
  const value = scene.model.intake.lowest(scene.suctionFlow);
  if (!Number.isFinite(value)) return null;
  const { stops } = suctionWay(scene, suctionFlow(scene));
  // A joint of several tanks and the end of the path stand for pressures that are counted already.
  const places = stops.filter(({ path }) => path !== null);
  const p = places.flatMap((stop) => stop.pressure() ?? []);
  return worked(lowestPressure, { p }, { value });
}
