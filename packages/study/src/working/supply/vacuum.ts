import { suctionWay } from "../path/suctionWay.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";

/** Vacuum at the end of the suction path at a flow; null where nothing passes. */
export function vacuumHere(scene: Scene, flow: Step): Step | null {
  return suctionWay(scene, flow).vacuum();
}
