import type { Fitted } from "../../gauge/fitAll.js";
import type { GaugeFits } from "../../gauge/gaugeFits.js";
import type { GaugeSide } from "../../gauge/instantsOf.js";
import type { SideFit } from "../../gauge/SideFit.js";
import { type FitScene, fitScene } from "./FitScene.js";
import type { GaugeGiven } from "./GaugeGiven.js";

/** The law that explains a gauge's readings best, together with what is found besides soil. */
export function explainedScene(
  given: GaugeGiven,
  { facts }: GaugeFits,
  side: GaugeSide,
  { weighed, explained }: SideFit,
): FitScene {
  return fitScene(given, { facts, side, weighed, fitted: explained.fits[0] as Fitted });
}
