import { life as followLife, type LifeGiven } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import { factsOf } from "./factsOf.js";
import type { LifeAnswer } from "./LifeAnswer.js";
import { traceOf } from "./traceOf.js";

/**
 * What gauges would read over the whole of a life, close enough to draw: `life` itself gives the moments at which the duty
 * changes, and between them vacuum grows in a curve.
 *
 * The same life is followed again with every stretch of the duty cut into pieces, which moves nothing: pieces of one
 * stretch have one temperature and the same loads. It ends where `life` ends, to the rounding of its steps.
 *
 * @param system as `life` takes it
 * @param answer what `life` says of it
 * @param moments about how many are wanted from the start to the end, or to `until`
 * @param until running time to draw to where no limit is met, s
 * @returns the trace of `answer`, finer; as it is where there is nothing to follow
 */
export function lifeTrace(system: System, answer: LifeAnswer, moments: number, until: number): LifeAnswer["trace"] {
  const facts = factsOf(system);
  const last = answer.end?.time ?? Math.min(until, answer.horizon);
  if ("reasons" in facts || !(last > 0)) return answer.trace;
  const given = cut({ ...facts.given, horizon: answer.end ? answer.horizon : last }, last, last / moments);
  const { end, moments: found } = followLife(given);
  const place = end?.point ?? 0;
  const before = found.filter(({ time }) => time < (end?.time ?? Number.POSITIVE_INFINITY));
  return traceOf(given, end ? [...before, end] : before, place);
}

/** A duty with no stretch longer than `piece`, s, before the running time `last`, s. */
function cut(given: LifeGiven, last: number, piece: number): LifeGiven {
  let from = 0;
  const phases = given.phases.flatMap((phase) => {
    const drawn = Math.min(phase.duration, Math.max(0, last - from));
    from += phase.duration;
    const pieces = Math.ceil(drawn / piece);
    if (pieces === 0) return [phase];
    // One piece many times, not many pieces: what is worked out of it is then worked out once.
    const one = { ...phase, duration: drawn / pieces };
    const rest = phase.duration - drawn;
    const all = Array.from({ length: pieces }, () => one);
    return rest > 0 ? [...all, { ...phase, duration: rest }] : all;
  });
  return { ...given, phases };
}
