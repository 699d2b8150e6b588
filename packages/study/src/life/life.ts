import { life as followLife, type Life, type LifeGiven, type LifeMoment } from "@thirstline/core";
import { type Built, build, type System } from "@thirstline/spec/system";
import { limitsOf } from "../check/limitsOf.js";
import { supplyOf } from "../check/supplyOf.js";
import { changeRule } from "./changeRule.js";
import { cleanlinessOf } from "./cleanlinessOf.js";
import { type Delivered, deliveredOf } from "./deliveredOf.js";
import { type Duty, dutyOf } from "./dutyOf.js";
import { elementRows } from "./elementRows.js";
import { type Elements, elementsOf } from "./elementsOf.js";
import { filtersOf } from "./filtersOf.js";
import type { LifeAnswer, LifeCaution, LifeReason, PartialChange } from "./LifeAnswer.js";
import { measuresOf } from "./measuresOf.js";
import { traceOf } from "./traceOf.js";

/** Years of duty looked ahead. */
const YEARS_AHEAD = 10;

/** All that a life is worked out from. */
export interface LifeFacts {
  readonly system: System;
  readonly built: Built;
  readonly duty: Duty;
  readonly delivered: Delivered;
  readonly elements: Elements;
  readonly given: LifeGiven;
}

/**
 * How long do the elements last? Soil is followed on each through the year's duty, to the moment a limit is met at the
 * worst duty point; then when to change, by whichever rule comes first, and what changing one element alone would do.
 *
 * @param system from a system file; needs delivered fuel and duty
 * @returns the answer; "cannot say" with its reasons where something it rests on is not stated
 */
export function life(system: System): LifeAnswer {
  const facts = factsOf(system);
  if (Array.isArray(facts)) return unknownLife(system, facts);
  const { given, duty } = facts as LifeFacts;
  return answerOf(facts as LifeFacts, followLife(given), duty);
}

/** What a life is worked out from, or why it cannot be. */
export function factsOf(system: System): LifeFacts | LifeReason[] {
  const built = build(system);
  const duty = dutyOf(system, built);
  const elements = elementsOf(system, built);
  const delivered = system.deliveredFuel ? deliveredOf(system.deliveredFuel) : ({ code: "no delivered fuel" } as const);
  const reasons: LifeReason[] = [];
  if (!duty) reasons.push({ code: "no duty" });
  if ("code" in delivered) reasons.push(delivered);
  if (elements.elements.length === 0) reasons.push({ code: "no filter" });
  else if (!elements.elements.some(({ law, efficiency }) => law && efficiency))
    reasons.push({ code: "no growing element" });
  if (duty && duty.points.length === 0) reasons.push({ code: "no temperature to judge" });
  if (!duty || "code" in delivered || reasons.length > 0) return reasons;
  const given: LifeGiven = {
    supply: supplyOf(built),
    elements: elements.elements,
    phases: duty.phases,
    delivered: delivered.distribution,
    held: system.deliveredFuel?.held ?? "delivered fuel",
    points: duty.points,
    limits: limitsOf(built).limits,
    terminals: terminalsOf(system),
    horizon: YEARS_AHEAD * duty.year,
    ...dirtyOf(system, delivered),
  };
  return { system, built, duty, delivered, elements, given };
}

function answerOf(facts: LifeFacts, found: Life, duty: Duty): LifeAnswer {
  const { system, given, elements } = facts;
  const last = found.end ?? (found.moments.at(-1) as LifeMoment);
  const worst = duty.points[0] as Duty["points"][number];
  const rule = changeRule(system, duty.year, found.end?.time ?? null);
  const early = found.end !== null && system.service !== undefined && found.end.time < system.service.interval;
  const measures = (time: number) => measuresOf(system, duty, found, time);
  return {
    question: "life",
    system: system.name,
    verdict: early ? "early" : "lasts",
    reasons: system.service ? [] : [{ code: "no service interval" }],
    cautions: [...duty.cautions, ...elements.cautions, ...restCautions(facts)],
    horizon: given.horizon,
    year: duty.year,
    end: found.end ? { ...measures(found.end.time), by: found.end.by, pointTemperature: worst.temperature } : null,
    interval: system.service
      ? {
          time: system.service.interval,
          atMost: system.service.atMost ?? system.service.interval,
          source: system.service.source ?? null,
        }
      : null,
    change: rule ? { ...measures(rule.time), by: rule.by } : null,
    elements: elementRows(given, found.moments[0] as LifeMoment, last),
    partial: found.end ? partialChanges(facts, found.end) : [],
    ...cleanlinessOf(system, given),
    trace: traceOf(given, [...found.moments, ...(found.end ? [found.end] : [])]),
    spread: null,
  };
}

function restCautions({ given, delivered }: LifeFacts): LifeCaution[] {
  const cautions: LifeCaution[] = [{ code: "held", held: given.held }];
  if (delivered.extrapolated > 0.05) cautions.push({ code: "extrapolated", share: delivered.extrapolated });
  return cautions;
}

/** What follows when, at the end, one element alone is changed and the others stay as they are. */
function partialChanges({ given }: LifeFacts, end: LifeMoment): PartialChange[] {
  if (given.elements.length < 2) return [];
  return given.elements.map(({ name }, changed) => {
    const elements = given.elements.map((element, at) => ({
      ...element,
      soil: at === changed ? 0 : (end.soil[at] ?? 0),
    }));
    const { dirty: _, ...rest } = given;
    return { element: name, time: followLife({ ...rest, elements }).end?.time ?? null };
  });
}

function terminalsOf(system: System): ReadonlyMap<string, number> {
  return new Map(
    filtersOf(system).flatMap(({ name, terminalDrop }) =>
      terminalDrop === undefined ? [] : [[name, terminalDrop] as const],
    ),
  );
}

/** The one dirty delivery of a file: what it brings over and above the usual. */
function dirtyOf(system: System, usual: Delivered): Pick<LifeGiven, "dirty"> {
  const stated = system.deliveredFuel?.dirtyDelivery;
  const made = stated && deliveredOf(stated);
  if (!stated || !made || "code" in made) return {};
  const over = (all: Float64Array, base: Float64Array) =>
    all.map((value, bin) => Math.max(0, value - (base[bin] ?? 0)));
  const extra = {
    counts: over(made.distribution.counts, usual.distribution.counts),
    masses: over(made.distribution.masses, usual.distribution.masses),
  };
  return { dirty: { at: stated.after, volume: stated.volume, extra } };
}

function unknownLife(system: System, reasons: readonly LifeReason[]): LifeAnswer {
  return {
    question: "life",
    system: system.name,
    verdict: "cannot say",
    reasons,
    cautions: [],
    horizon: 0,
    year: 0,
    end: null,
    interval: null,
    change: null,
    elements: [],
    partial: [],
    cleanliness: [],
    protection: null,
    trace: { time: [], vacuum: [], feed: [] },
    spread: null,
  };
}
