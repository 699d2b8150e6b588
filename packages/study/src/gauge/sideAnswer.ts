import { elementsNow } from "./elementsNow.js";
import type { Finding, GaugeSide, SideAnswer } from "./GaugeAnswer.js";
import { type GaugeFacts, gaugeErrorOf } from "./gaugeFacts.js";
import type { SideFit } from "./SideFit.js";

/** What one gauge says; of elements only where nothing but soil, or a jump of it, is in its readings. */
export function sideAnswer(
  side: GaugeSide,
  facts: GaugeFacts,
  fit: SideFit | null,
  findings: readonly Finding[],
): SideAnswer | null {
  if (!fit) return null;
  const { soil, weighed } = fit;
  const { instants } = weighed.run;
  const state = soil.best.model.stateAt(soil.best.fit.parameters);
  const sign = side === "delivery" ? -1 : 1;
  const soilOnly = findings.every(({ code }) => code === "loading" || code === "jump");
  return {
    side,
    readings: instants.length,
    elements: soilOnly ? elementsNow(facts, side, fit) : [],
    scatter: weighed.sigmas.at(-1) ?? 0,
    gaugeError: gaugeErrorOf(facts),
    demand: state.demand,
    zero: sign * state.zero,
    laws: soil.laws.flatMap(({ fitted: { model }, weight }) =>
      model.shape.law === "none" ? [] : [{ law: model.shape.law, mix: model.shape.mix, weight }],
    ),
    trend: soil.trend,
    trace: {
      time: instants.map(({ time }) => time),
      read: instants.map(({ read }) => sign * read),
      reckoned: instants.map(({ table, time }) => sign * (table.at(state.demand, state.ratioAt(time)) + state.zero)),
    },
  };
}
