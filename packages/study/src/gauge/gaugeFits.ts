import type { GaugeReading, System } from "@thirstline/spec/system";
import { findingsOf, type Shown } from "./findingsOf.js";
import type { Finding, GaugeOptions, GaugeReason } from "./GaugeAnswer.js";
import { type GaugeFacts, gaugeFacts } from "./gaugeFacts.js";
import type { Run } from "./Instant.js";
import { type GaugeSide, instantsOf } from "./instantsOf.js";
import { counted, FEWEST, type Lefts, leftsOf } from "./leftsOf.js";
import { type SideFit, sideFit } from "./SideFit.js";

/** Readings with all that was fitted to them: what an answer is made of. */
export interface GaugeFits {
  readonly facts: GaugeFacts;
  /** each gauge with all its readings; null where there are none */
  readonly suction: SideFit | null;
  readonly delivery: SideFit | null;
  readonly shown: readonly Shown[];
  /** the same after a jump, where one is found */
  readonly settled: Readonly<Record<GaugeSide, SideFit | null>>;
  readonly lefts: readonly Lefts[];
}

/** Fits what gauges read, or says why that cannot be. */
export function gaugeFits(
  system: System,
  readings: readonly GaugeReading[],
  options: GaugeOptions,
): GaugeFits | GaugeReason {
  const facts = gaugeFacts(system, readings, options);
  if ("code" in facts) return facts;
  if (facts.suction.names.length + facts.delivery.names.length === 0) return { code: "no filter" };
  if (facts.shut) return { code: "shut" };
  const seed = options.seed ?? 1;
  const suction = fitOf("suction", facts, () => new Map(), seed);
  const delivery = fitOf("delivery", facts, suctionAt(facts, suction), seed);
  if (!suction && !delivery) return { code: "no readings", side: "suction" };
  const shown = findingsOf(suction, delivery).filter(
    ({ finding: one }) => one.code !== "loading" || counted(one.side === "suction" ? suction : delivery) >= FEWEST,
  );
  const findings = shown.map(({ finding }) => finding);
  const settled = {
    suction: afterJump("suction", suction, findings, seed),
    delivery: afterJump("delivery", delivery, findings, seed),
  };
  return { facts, suction, delivery, shown, settled, lefts: leftsOf(facts, settled, findings) };
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
  return side === "delivery" && start.known && start.by === "stated" ? { ...start, ratio: delivery.begun } : start;
}

/** The elements before the pump at a running time, s, as their gauge has them; clean, or as the file states, without one. */
export function suctionAt(
  { suction, run }: GaugeFacts,
  fit: SideFit | null,
): (time: number) => ReadonlyMap<string, number> {
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
