import { type BandEnd, type LifeGiven, massOf, SupplyModel } from "@thirstline/core";
import { type Built, build, type System } from "@thirstline/spec/system";
import { filterFlows } from "../check/filterFlows.js";
import { limitsOf } from "../check/limitsOf.js";
import { shutBy } from "../check/shutBy.js";
import { supplyOf } from "../check/supplyOf.js";
import { type Delivered, deliveredOf } from "./deliveredOf.js";
import { type Duty, dutyOf } from "./dutyOf.js";
import { type Elements, elementsOf } from "./elementsOf.js";
import { filtersOf } from "./filtersOf.js";
import { type Guess, likely } from "./Guess.js";
import type { LifeReason } from "./LifeAnswer.js";

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

/** Why there are no such facts, and what was found on the way. */
export interface NoFacts {
  readonly reasons: readonly LifeReason[];
  readonly elements: Elements;
}

/**
 * What a life is worked out from, or why it cannot be.
 *
 * @param guess where to stand within what is only estimated of elements
 * @param end which end of the bands of media known by an estimate
 */
export function factsOf(system: System, guess: Guess = likely, end: BandEnd = "middle"): LifeFacts | NoFacts {
  const built = build(system);
  const duty = dutyOf(system, built);
  const supply = supplyOf(built);
  const [coldest] = duty?.points ?? [];
  const flows = () =>
    coldest
      ? filterFlows(new SupplyModel(supply, { fuel: coldest.fuel, passage: "smooth", end }), coldest.demand)
      : new Map<string, number>();
  const elements = elementsOf(system, built, guess, flows);
  const delivered = system.deliveredFuel ? deliveredOf(system.deliveredFuel) : ({ code: "no delivered fuel" } as const);
  const reasons: LifeReason[] = [];
  const shut = shutBy(supply);
  if (shut !== null) reasons.push({ code: "shut", by: shut });
  if (!duty) reasons.push({ code: "no duty" });
  if ("code" in delivered) reasons.push(delivered);
  if (elements.elements.length === 0) reasons.push({ code: "no filter" });
  else if (!elements.elements.some(({ law, efficiency, swells }) => (law && efficiency) || swells)) {
    reasons.push({ code: "no growing element" });
  }
  if (duty && duty.points.length === 0) reasons.push({ code: "no temperature to judge" });
  if (!duty || "code" in delivered || reasons.length > 0) return { reasons, elements };
  const given: LifeGiven = {
    supply,
    elements: elements.elements,
    phases: duty.phases,
    delivered: delivered.distribution,
    held: system.deliveredFuel?.held ?? "delivered fuel",
    points: duty.points,
    limits: limitsOf(built).limits,
    terminals: terminalsOf(system),
    horizon: YEARS_AHEAD * duty.year,
    end,
    ...dirtyOf(system, delivered),
  };
  return { system, built, duty, delivered, elements, given };
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
  return massOf(extra) > 0 ? { dirty: { at: stated.after, volume: stated.volume, extra } } : {};
}
