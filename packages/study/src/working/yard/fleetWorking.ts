import type { Leaf } from "../leaves/Leaf.js";
import type { Working } from "../Step.js";
import { workingOf } from "../workingOf.js";
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
export function fleetWorking(choice: FleetChoice, { of = "yard", figure, asked }: Leaf): Working | null {
  const member = choice.members.get(of);
  if (!member) return null;
  const own = member.own.find(({ name }) => name === figure);
  const step = own ? own.make() : member.system && (workingOf(member.system, figure, asked)?.step ?? null);
  return step && Number.isFinite(step.value) ? { figure, system: member.name, step } : null;
}

/** Names of the figures there are of one member of a yard. */
export function fleetFigures(choice: FleetChoice, of: string): readonly string[] {
  return (choice.members.get(of)?.own ?? []).filter(({ make }) => make() !== null).map(({ name }) => name);
}
