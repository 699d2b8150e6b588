import type { Leaf } from "../leaves/Leaf.js";
import { memberFigures, memberWorking } from "../members.js";
import type { Working } from "../Step.js";
import type { FleetChoice } from "./fleetChoice.js";

/**
 * How a figure of `fleet` was reached. What is not the yard's own is `check`'s or `life`'s of the machine's system with new
 * elements.
 *
 * @param choice from `fleetChoice`
 * @param leaf from `leafAt`, or a name of `fleetFigures` with the member it belongs to
 * @returns null for what is no figure, or one without a value here
 * @example
 * fleetWorking(choice, { of: "machine 0", figure: "days until it is due", asked: {} })?.step.value // d
 */
export function fleetWorking(choice: FleetChoice, leaf: Leaf): Working | null {
  return memberWorking(choice.members, leaf.of ?? "yard", leaf);
}

/** Names of the figures there are of one member of a yard. */
export function fleetFigures(choice: FleetChoice, of: string): readonly string[] {
  return memberFigures(choice.members, of);
}
