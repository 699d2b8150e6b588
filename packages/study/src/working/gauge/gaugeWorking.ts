import type { Leaf } from "../leaves/Leaf.js";
import { memberFigures, memberWorking } from "../members.js";
import type { Working } from "../Step.js";
import type { GaugeChoice } from "./gaugeChoice.js";

/**
 * How a figure of `gauge` was reached. What is not the readings' own is `check`'s or `life`'s of the system.
 *
 * @param choice from `gaugeChoice`
 * @param leaf from `leafAt`, or a name of `gaugeFigures` with the member it belongs to
 * @returns null for what is no figure, or one without a value here
 * @example
 * gaugeWorking(choice, { of: "left", figure: "running time left", asked: {} })?.step.value // s
 */
export function gaugeWorking(choice: GaugeChoice, leaf: Leaf): Working | null {
  return memberWorking(choice.members, leaf.of ?? "readings", leaf);
}

/** Names of the figures there are of one member of readings. */
export function gaugeFigures(choice: GaugeChoice, of: string): readonly string[] {
  return memberFigures(choice.members, of);
}
