import type { LifeGiven, LifeMoment } from "@thirstline/core";

/** Resistance over clean at a moment, by filter name. */
export function restrictionsOf(given: LifeGiven, moment: LifeMoment): Map<string, number> {
  return new Map(given.elements.map(({ name }, at) => [name, moment.restriction[at] ?? 1]));
}
