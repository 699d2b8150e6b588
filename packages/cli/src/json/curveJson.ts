import type { CurveAnswer, CurveColumn, CurvePoint, CurveSpread, CurveState } from "@thirstline/study";
import { band } from "./band.js";
import { ceilingsJson } from "./checkJson.js";
import { figure } from "./figure.js";
import { remark } from "./remarks.js";

/** Why a column has gaps. */
const GAPS = "null where the demand is more than the pump can move";

/** An answer to `curve` for programs: SI, every figure or column of figures with its unit. */
export function curveJson(
  { question, system, pump, suctionFollows, atChange, points }: CurveAnswer,
  spreads: readonly CurveSpread[] = [],
) {
  const shown = points.map((point, at) => {
    const spread = spreads[at];
    return spread === undefined ? pointJson(point) : { ...pointJson(point), spread: spreadJson(spread) };
  });
  return {
    question,
    system,
    pump,
    suctionFollows,
    atChange: atChange && {
      parts: atChange.parts,
      temperature: figure(atChange.temperature, "K", "not known"),
    },
    points: shown,
  };
}

function pointJson(point: CurvePoint) {
  const { duty, vacuumLimits } = point;
  return {
    temperature: figure(point.temperature, "K", "not known"),
    unanswered: point.unanswered.map(remark),
    cautions: point.cautions.map(remark),
    demand: column(point.demand, "m3/s"),
    clean: point.clean && stateJson(point.clean),
    now: point.now && stateJson(point.now),
    atChange: point.atChange && stateJson(point.atChange),
    duty: {
      demand: figure(duty.demand, "m3/s", "not known"),
      suctionFlow: figure(duty.suctionFlow, "m3/s", "not known"),
      vacuum: band(duty.vacuum, "Pa", "shut"),
      vacuumNow: band(duty.vacuumNow, "Pa", duty.vacuumNow === null ? "no soil stated on the suction side" : "shut"),
      vacuumAtChange: band(
        duty.vacuumAtChange,
        "Pa",
        duty.vacuumAtChange === null ? "no terminal drop stated" : "shut",
      ),
      feedPressure: band(duty.feedPressure, "Pa", "not known for this pump, or shut"),
    },
    vacuumLimits: {
      clean: figure(vacuumLimits.clean, "Pa", "no limit"),
      atChange: figure(vacuumLimits.atChange, "Pa", "no limit"),
    },
    feedLimit: figure(point.feedLimit, "Pa", "no limit"),
    ceilings: ceilingsJson(point.ceilings),
  };
}

function stateJson({ vacuum, feedPressure }: CurveState) {
  return { vacuum: bandColumn(vacuum), feedPressure: feedPressure && bandColumn(feedPressure) };
}

/** What 10 and 90 % of draws stay below, with clean elements, at each demand. */
function spreadJson({ vacuum, feedPressure }: CurveSpread) {
  const ends = ({ low, high }: CurveSpread["vacuum"]) => ({ low: column(low, "Pa"), high: column(high, "Pa") });
  return { vacuum: ends(vacuum), feedPressure: feedPressure && ends(feedPressure) };
}

function bandColumn({ middle, band: ends }: CurveColumn) {
  return {
    middle: column(middle, "Pa"),
    ...(ends && { low: column(ends.low, "Pa"), high: column(ends.high, "Pa") }),
  };
}

function column(values: Float64Array, unit: string) {
  const value = Array.from(values, (one) => (Number.isFinite(one) ? one : null));
  return value.includes(null) ? { value, unit, reason: GAPS } : { value, unit };
}
