import type { GaugeReading, System } from "@thirstline/spec/system";
import { findingsOf, outliersOf } from "./findingsOf.js";
import type { Finding, GaugeAnswer, GaugeOptions, GaugeReason } from "./GaugeAnswer.js";
import { gaugeCautions } from "./gaugeCautions.js";
import { type GaugeFacts, gaugeFacts } from "./gaugeFacts.js";
import type { Run } from "./Instant.js";
import { type GaugeSide, instantsOf } from "./instantsOf.js";
import { counted, FEWEST, leftsOf, soonest } from "./leftsOf.js";
import { type SideFit, sideFit } from "./SideFit.js";
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
  const facts = gaugeFacts(system, readings, options);
  if ("code" in facts) return unknown(system, readings, [facts]);
  if (facts.suction.names.length + facts.delivery.names.length === 0)
    return unknown(system, readings, [{ code: "no filter" }]);
  if (facts.shut) return unknown(system, readings, [{ code: "shut" }]);
  const seed = options.seed ?? 1;
  const suction = fitOf("suction", facts, () => new Map(), seed);
  const delivery = fitOf("delivery", facts, suctionAt(facts, suction), seed);
  if (!suction && !delivery) return unknown(system, readings, [{ code: "no readings", side: "suction" }]);
  const findings = findingsOf(suction, delivery).filter(
    (one) => one.code !== "loading" || counted(one.side === "suction" ? suction : delivery) >= FEWEST,
  );
  const settled = {
    suction: afterJump("suction", suction, findings, seed),
    delivery: afterJump("delivery", delivery, findings, seed),
  };
  const lefts = leftsOf(facts, settled, findings);
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

function fitOf(
  side: GaugeSide,
  facts: GaugeFacts,
  others: (time: number) => ReadonlyMap<string, number>,
  seed: number,
): SideFit | null {
  const path = facts[side];
  if (path.names.length === 0) return null;
  const { built, gaugeError, run } = facts;
  const instants = instantsOf(side, run.readings, { built, path, others, gaugeError });
  return sideFit(side, { instants, start: startOf(side, facts) }, facts.zero[side], facts.weight, seed);
}

/** Soil that the file states of the side before the pump says nothing of the other. */
function startOf(side: GaugeSide, { run, delivery }: GaugeFacts): Run["start"] {
  const { start } = run;
  return side === "delivery" && start.known && start.by === "stated"
    ? { ...start, ratio: delivery.at(1).get(delivery.lead) ?? 1 }
    : start;
}

/** The elements before the pump at a running time, s, as their gauge has them; clean, or as the file states, without one. */
function suctionAt({ suction, run }: GaugeFacts, fit: SideFit | null): (time: number) => ReadonlyMap<string, number> {
  if (!fit) return () => suction.at(run.start.known ? run.start.ratio : 1);
  const { best } = fit.soil;
  const state = best.model.stateAt(best.fit.parameters);
  return (time) => suction.at(state.ratioAt(time));
}

/** After a jump only what was read since counts, and nothing is known of the soil it began with. */
function afterJump(side: GaugeSide, fit: SideFit | null, findings: readonly Finding[], seed: number): SideFit | null {
  const jump = findings.findLast((one) => one.code === "jump" && one.side === side);
  if (!fit || jump?.code !== "jump") return fit;
  const { run, zeroSpread } = fit.weighed;
  const from = run.instants.findIndex(({ reading }) => reading.row === jump.from.row);
  const rest: Run = { instants: run.instants.slice(from), start: { known: false } };
  return sideFit(side, rest, zeroSpread, fit.weighed.prior.weight, seed) ?? fit;
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
