import type { GaugeReading, System } from "@thirstline/spec/system";
import type { GaugeAnswer, GaugeOptions, GaugeReason } from "./GaugeAnswer.js";
import { gaugeCautions } from "./gaugeCautions.js";
import { gaugeFits } from "./gaugeFits.js";
import { soonest } from "./leftsOf.js";
import { outliersOf } from "./outliersOf.js";
import { sideAnswer } from "./sideAnswer.js";

/**
 * What does the gauge say? How much of what it reads is soil, how long until the change limit, and whether it is the filter
 * at all.
 *
 * One vacuum gauge fits one common scale of soil for all elements before the pump, in the proportions `life` predicts; those
 * behind the pump need feed pressures. All of core's loading laws are tried against each other and against no growth, by
 * Akaike's criterion for few readings; besides soil, steps, readings that stand off, cold-dependence beyond viscosity and
 * falling resistance are looked for. The file may be off by 10 % in its demand and resistances, and a gauge by its zero.
 *
 * Good for steady readings with the engine warm; it cannot tell which of several elements on one gauge is dirty.
 *
 * @param system from a system file
 * @param readings in order of time, from `readReadings`
 * @param options gauge's error, Pa; seed of the draws
 * @returns the answer; "cannot tell" with its reasons where readings do not say
 * @see `leftOf` for how the interval is made
 * @example
 * gauge(system, readings).left?.middle // s
 */
export function gauge(system: System, readings: readonly GaugeReading[], options: GaugeOptions = {}): GaugeAnswer {
  const fits = gaugeFits(system, readings, options);
  if ("code" in fits) return unknown(system, readings, [fits]);
  const { facts, suction, delivery, settled, lefts } = fits;
  const findings = fits.shown.map(({ finding }) => finding);
  const left = soonest(lefts.map(({ all }) => all));
  const without = soonest(lefts.map(({ without: one }) => one));
  const known = left && "middle" in left ? left : null;
  return {
    question: "gauge",
    system: system.name,
    pump: system.pump.kind,
    verdict:
      findings.length === 0 ? "cannot tell" : findings.every(({ code }) => code === "loading") ? "filter" : "other",
    findings,
    reasons: left && "code" in left ? [left] : [],
    cautions: gaugeCautions(facts, settled, findings),
    outliers: [...outliersOf("suction", suction), ...outliersOf("delivery", delivery)],
    sides: (["suction", "delivery"] as const).flatMap((side) => sideAnswer(side, facts, settled[side], findings) ?? []),
    left: known,
    leftWithout: known && without && "middle" in without ? without : null,
    readings: { all: readings.length, used: facts.run.readings.length },
  };
}

function unknown(system: System, readings: readonly GaugeReading[], reasons: readonly GaugeReason[]): GaugeAnswer {
  return {
    question: "gauge",
    system: system.name,
    pump: system.pump.kind,
    verdict: "cannot tell",
    findings: [],
    reasons,
    cautions: [],
    outliers: [],
    sides: [],
    left: null,
    leftWithout: null,
    readings: { all: readings.length, used: 0 },
  };
}
