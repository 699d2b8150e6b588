import type { SupplyModel } from "../../supply/index.js";
import type { Efficiency } from "../capture/Capture.js";
import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import { binCount } from "../distribution/sizeEdges.js";
import { catchAlong, type Freed } from "./catchAlong.js";

/** What is held fixed while elements fill. */
export type HeldFixed =
  /** how dirty the delivered fuel is; what returns thins the tank */
  | "delivered fuel"
  /** how dirty the fuel is that leaves the tank, whatever returns */
  | "tank";

/** Flows of an engine, m3/s. */
export interface DemandFlows {
  readonly burn: number;
  readonly return: number;
}

/** How fast each filter catches soil, kg/s by name, with the elements as the model has them. */
export interface CatchRates {
  readonly rates: ReadonlyMap<string, number>;
  /** particles in the tank over those in the delivered fuel, by size */
  readonly tankShare: Float64Array;
  /** particles behind the suction side, and at the end of the path, over those in the tank, by size */
  readonly suctionShare: Float64Array;
  readonly pathShare: Float64Array;
  /** what each filter frees the fuel of, m3/s by name and size, and what tank and path lose in all, m3/s by size */
  readonly freed: ReadonlyMap<string, Float64Array>;
  readonly cleared: Float64Array;
}

/**
 * The steady soil balance of tank and path: in each size the delivered fuel brings burn c_in, and the tank loses what is
 * burnt and what the path frees on its way round. A tank turns over in hours and elements fill in hundreds, so the
 * steady balance is taken at every moment; `tankBalance` gives the hours before it.
 *
 * @param model with the elements as they are
 * @param demand of the engine now
 * @param delivered masses of its fuel, kg/m3 by size
 * @param efficiencies by filter name
 * @param held what is held fixed
 */
export function catchRates(
  model: SupplyModel,
  demand: DemandFlows,
  delivered: ParticleDistribution,
  efficiencies: ReadonlyMap<string, Efficiency>,
  held: HeldFixed,
): CatchRates {
  const total = demand.burn + demand.return;
  const suctionFlow = model.suctionFlow(total);
  const { tanks, main } = model.intake.ways(suctionFlow);
  const freed: Freed = new Map();
  const passing = new Float64Array(binCount);
  for (const { stops, flow } of tanks) {
    const own = new Float64Array(binCount).fill(1);
    catchAlong(stops, flow, own, efficiencies, freed);
    const share = flow / suctionFlow;
    for (let bin = 0; bin < binCount; bin++) passing[bin] = (passing[bin] as number) + share * (own[bin] as number);
  }
  catchAlong(main.stops, main.flow, passing, efficiencies, freed);
  const behindSuction = passing.slice();
  catchAlong(model.delivery.way(total).stops, total, passing, efficiencies, freed);
  // What relief sends back to the tank; what it sends to the pump's own inlet stays in the round.
  const toTank = suctionFlow - total;
  // m3/s of fuel freed of each size: burnt with it, or come back without it
  const cleared = passing.map(
    (whole, bin) => demand.burn + demand.return * (1 - whole) + toTank * (1 - (behindSuction[bin] as number)),
  );
  const tankShare = cleared.map((flow) => (held === "tank" ? 1 : demand.burn / flow));
  const rates = new Map<string, number>();
  for (const [name, flow] of freed) {
    let rate = 0;
    for (let bin = 0; bin < binCount; bin++)
      rate += (flow[bin] as number) * (tankShare[bin] as number) * (delivered.masses[bin] as number);
    rates.set(name, rate);
  }
  return { rates, freed, cleared, tankShare, suctionShare: behindSuction, pathShare: passing };
}
