import type { CeilingFigure, CheckAnswer, CheckPoint, CheckSpread, PartRow } from "@thirstline/study";
import { band } from "./band.js";
import { checkSpreadJson } from "./checkSpreadJson.js";
import { figure } from "./figure.js";
import { remark } from "./remarks.js";

/** An answer to `check` for programs: SI, every figure with its unit. */
export function checkJson(
  { question, system, pump, limitSource, verdict, points }: CheckAnswer,
  spreads: readonly CheckSpread[] = [],
) {
  const shown = points.map((point, at) => {
    const spread = spreads[at];
    return spread === undefined ? pointJson(point) : { ...pointJson(point), spread: checkSpreadJson(spread) };
  });
  return { question, system, pump, limitSource, verdict, points: shown };
}

function pointJson(point: CheckPoint) {
  const { fuel, demand, vacuumLimits, lowest, most } = point;
  return {
    temperature: figure(point.temperature, "K", "not known"),
    verdict: point.verdict,
    reasons: point.reasons.map(remark),
    cautions: point.cautions.map(remark),
    fuel: {
      name: fuel.name,
      density: figure(fuel.density, "kg/m3", "not known"),
      kinematicViscosity: figure(fuel.kinematicViscosity, "m2/s", "not known"),
      vapourPressure: figure(fuel.vapourPressure, "Pa", "not known"),
      cloudPoint: figure(fuel.cloudPoint, "K", "not given"),
      coldFilterPluggingPoint: figure(fuel.coldFilterPluggingPoint, "K", "not given"),
    },
    demand: {
      burn: figure(demand.burn, "m3/s", "not known"),
      return: figure(demand.return, "m3/s", "not known"),
      total: figure(demand.total, "m3/s", "not known"),
    },
    suctionFlow: figure(point.suctionFlow, "m3/s", "not known"),
    vacuum: band(point.vacuum, "Pa", "shut"),
    vacuumNow: band(point.vacuumNow, "Pa", point.vacuumNow === null ? "no soil stated on the suction side" : "shut"),
    vacuumLimits: {
      clean: figure(vacuumLimits.clean, "Pa", "no limit"),
      atChange: figure(vacuumLimits.atChange, "Pa", "no limit"),
    },
    feedPressure: band(point.feedPressure, "Pa", "not known for this pump, or shut"),
    feedLimit: figure(point.feedLimit, "Pa", "no limit"),
    lowest: lowest && { pressure: band(lowest.pressure, "Pa", "shut"), part: lowest.part },
    velocityHead: figure(point.velocityHead, "Pa", "not known"),
    ceilings: ceilingsJson(point.ceilings),
    binds: point.binds,
    inHand: band(point.inHand, "1", "demand does not touch the limit"),
    riseFree: band(point.riseFree, "Pa", point.riseFree === null ? "no limit" : "shut"),
    most: most && { name: most.name, share: figure(most.share, "1", "not known") },
    suction: point.suction.map(rowJson),
    delivery: point.delivery.map(rowJson),
  };
}

/** Both ceilings with what binds them. */
export function ceilingsJson({ clean, atChange }: CheckPoint["ceilings"]) {
  const one = ({ flow, limit }: CeilingFigure) => ({
    flow: band(flow, "m3/s", "demand does not touch the limit"),
    limit,
  });
  return { clean: one(clean), atChange: one(atChange) };
}

function rowJson(row: PartRow) {
  return {
    name: row.name,
    kind: row.kind,
    depth: figure(row.depth, "1", "not known"),
    flow: figure(row.flow, "m3/s", "not known"),
    drop: figure(row.drop, "Pa", "holds back: nothing flows"),
    share: figure(row.share, "1", "not known"),
    pressure: figure(row.pressure, "Pa", "nothing flows"),
    reynolds: figure(row.reynolds, "1", "no bore"),
    regime: row.regime,
  };
}
