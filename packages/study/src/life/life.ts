import { life as followLife, type Life, type LifeMoment } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import { changeRule } from "./changeRule.js";
import { cleanlinessOf } from "./cleanlinessOf.js";
import type { Duty } from "./dutyOf.js";
import { elementRows } from "./elementRows.js";
import { factsOf, type LifeFacts, type NoFacts } from "./factsOf.js";
import type { LifeAnswer, LifeCaution, LifeReason } from "./LifeAnswer.js";
import { measuresOf } from "./measuresOf.js";
import { partialChanges } from "./partialChanges.js";
import { rangeOf } from "./rangeOf.js";
import { traceOf } from "./traceOf.js";
import { waterOf } from "./waterOf.js";

/**
 * How long do the elements last? Soil is followed on each through the year's duty, to the moment a limit is met at the
 * worst duty point; then when to change, by whichever rule comes first, and what changing one element alone would do.
 *
 * @param system from a system file; needs delivered fuel and duty
 * @returns the answer; "cannot say" with its reasons where something it rests on is not stated
 */
export function life(system: System): LifeAnswer {
  const facts = factsOf(system);
  return "reasons" in facts ? unknownLife(system, facts) : answerOf(facts, followLife(facts.given));
}

function answerOf(facts: LifeFacts, found: Life): LifeAnswer {
  const { system, given, elements, duty } = facts;
  const { service } = system;
  const { end } = found;
  const last = end ?? (found.moments.at(-1) as LifeMoment);
  const rule = changeRule(system, duty.year, end?.time ?? null);
  const measures = (time: number) => measuresOf(system, duty, found, time);
  const range = rangeOf(facts);
  return {
    question: "life",
    system: system.name,
    pump: system.pump.kind,
    ...verdictOf(system, end?.time ?? null, range),
    cautions: [...duty.cautions, ...elements.cautions, ...restCautions(facts, last.time)],
    horizon: given.horizon,
    year: duty.year,
    end: end ? { ...measures(end.time), by: end.by, pointTemperature: pointAt(duty, end.point) } : null,
    range,
    interval: service
      ? { time: service.interval, atMost: service.atMost ?? service.interval, source: service.source ?? null }
      : null,
    change: rule ? { ...measures(rule.time), by: rule.by } : null,
    elements: elementRows(given, found.moments[0] as LifeMoment, last, end?.point ?? 0),
    partial: end && end.time > 0 ? partialChanges(system, given, end) : [],
    ...cleanlinessOf(system, given),
    water: waterOf(system, duty, given),
    trace: traceOf(given, waysideOf(found), end?.point ?? 0),
    spread: null,
  };
}

/** The moments on the way and the last, none twice. */
function waysideOf({ moments, end }: Life): LifeMoment[] {
  return [...(end ? moments.filter(({ time }) => time < end.time) : moments), ...(end ? [end] : [])];
}

/** Temperature of a duty point, K. */
function pointAt({ points }: Duty, place: number): number {
  return (points[place] as Duty["points"][number]).temperature;
}

/**
 * Early or not, judged at both ends of what is only estimated, as a supply is: where the ends disagree nobody can say.
 * What starves with clean elements is early whatever the interval.
 */
function verdictOf(
  { service }: System,
  end: number | null,
  range: LifeAnswer["range"],
): Pick<LifeAnswer, "verdict" | "reasons"> {
  const early = range ? range.early : end;
  const late = range ? range.late : end;
  const limit = service?.interval ?? 0;
  if (late !== null && (late < limit || late === 0)) return { verdict: "early", reasons: [] };
  if (early === null) return { verdict: "lasts", reasons: service ? [] : [{ code: "no service interval" }] };
  if (!service) return { verdict: "cannot say", reasons: [{ code: "no service interval" }] };
  if (early >= limit) return { verdict: "lasts", reasons: [] };
  return { verdict: "cannot say", reasons: [{ code: "unsettled", early, late }] };
}

function restCautions({ given, delivered, duty }: LifeFacts, reached: number): LifeCaution[] {
  const cautions: LifeCaution[] = [{ code: "held", held: given.held }];
  if (duty.points.length > 1) cautions.push({ code: "judged at the worst", coldest: pointAt(duty, 0) });
  if (given.dirty && given.dirty.at <= reached) {
    cautions.push({ code: "dirty delivery", after: given.dirty.at, volume: given.dirty.volume });
  }
  if (delivered.extrapolated > 0.05) cautions.push({ code: "extrapolated", share: delivered.extrapolated });
  return cautions;
}

function unknownLife(system: System, { reasons, elements }: NoFacts): LifeAnswer {
  return {
    question: "life",
    system: system.name,
    pump: system.pump.kind,
    verdict: "cannot say",
    reasons: reasons as LifeReason[],
    cautions: elements.cautions,
    horizon: 0,
    year: 0,
    end: null,
    range: null,
    interval: null,
    change: null,
    elements: [],
    partial: [],
    cleanliness: [],
    protection: null,
    water: null,
    trace: { time: [], vacuum: [], feed: [] },
    spread: null,
  };
}
