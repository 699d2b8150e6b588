import type { DutyPhase, Life, LifeGiven, LifeMoment } from "./LifeKinds.js";
import { requireGiven } from "./requireGiven.js";
import { Walk } from "./Walk.js";

/**
 * How long filter elements last: soil is followed on each, flows split anew as elements foul, and the moment the first
 * limit is met at the worst duty point is found to a millionth of an hour, not to the nearest step.
 *
 * Assumed: what an element catches does not change as it fills; fuel arrives equally dirty throughout save for one stated
 * delivery; loads are mixed finely within a phase. With `delivered fuel` held fixed the tank is in its steady balance.
 *
 * @param given see `LifeGiven`
 * @throws InputError for a horizon or duration not above 0, loads whose shares do not add up to 1, soil or water below 0
 * @example
 * life({ supply, elements, phases, delivered, held: "delivered fuel", points, limits, horizon: 5000 * 3600 }).end?.time
 */
export function life(given: LifeGiven): Life {
  requireGiven(given);
  const walk = new Walk(given);
  const moments: LifeMoment[] = [walk.moment()];
  if (walk.margin < 0) return { end: walk.ended(), moments };
  for (let at = 0; walk.time < given.horizon; at++) {
    const phase = given.phases[at % given.phases.length] as DutyPhase;
    const end = walk.through(phase);
    moments.push(walk.moment());
    if (end) return { end, moments };
  }
  return { end: null, moments };
}
