import { type BandEnd, life as followLife } from "@thirstline/core";
import { factsOf, type LifeFacts } from "./factsOf.js";
import { filtersOf } from "./filtersOf.js";
import { assumedMakeOf, oneBetaOf } from "./Guess.js";
import type { LifeAnswer } from "./LifeAnswer.js";

/**
 * Where what is only estimated puts the end of a life: handbook capacities, captures known at one beta, media known by an
 * estimate, each at both its ends. Null where nothing is estimated.
 */
export function rangeOf({ system, given }: LifeFacts): LifeAnswer["range"] {
  const filters = filtersOf(system).filter(({ blocked }) => !blocked);
  const capacities = filters.some((filter) => assumedMakeOf(filter) !== null) ? [0, 1] : [0.5];
  // A coarse element that catches less leaves more to the fine one, so the middle may be an end.
  const captures = filters.some((filter) => oneBetaOf(filter) !== null) ? [0, 0.5, 1] : [0.5];
  const ends: BandEnd[] = filters.some(isEstimated) ? ["low", "high"] : ["middle"];
  if (capacities.length + captures.length + ends.length === 3) return null;
  const times = ends.flatMap((end) =>
    capacities.flatMap((capacity) =>
      captures.map((capture) => {
        const facts = factsOf(system, { capacity: () => capacity, capture: () => capture }, end);
        return "given" in facts ? (followLife(facts.given).end?.time ?? Infinity) : given.horizon;
      }),
    ),
  );
  const finite = (time: number) => (time === Infinity ? null : time);
  return { early: finite(Math.min(...times)), late: finite(Math.max(...times)) };
}

/** Whether a medium's resistance is itself a band. */
function isEstimated({ medium: { by } }: ReturnType<typeof filtersOf>[number]): boolean {
  return by === "rating" || by === "fibre";
}
