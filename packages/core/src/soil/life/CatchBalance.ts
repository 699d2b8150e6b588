import type { SupplyModel } from "../../supply/index.js";
import type { Efficiency } from "../capture/Capture.js";
import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import { binCount } from "../distribution/sizeEdges.js";
import { type CatchWork, catchAlong } from "./catchAlong.js";

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

/**
 * The steady soil balance of tank and path: in each size the delivered fuel brings burn c_in, and the tank loses what is
 * burnt and what the path frees on its way round. A tank turns over in hours and elements fill in hundreds, so the
 * steady balance is taken at every moment; `tankBalance` gives the hours before it.
 *
 * `update` works it out for a model and a demand and leaves the figures in the fields; nothing is allocated, since a life
 * asks for it thousands of times.
 */
export class CatchBalance {
  /** particles in the tank over those in the delivered fuel, by size */
  readonly tankShare = new Float64Array(binCount);
  /** particles behind the suction side, and at the end of the path, over those in the tank, by size */
  readonly suctionShare = new Float64Array(binCount);
  readonly pathShare = new Float64Array(binCount);
  /** fuel that tank and path free of particles, m3/s by size */
  readonly cleared = new Float64Array(binCount);
  private readonly masses: Float64Array;
  private readonly held: HeldFixed;
  private readonly work: CatchWork;
  private readonly own = new Float64Array(binCount);

  /**
   * @param delivered fuel, kg/m3 by size
   * @param efficiencies of the followed filters, by name
   */
  constructor(delivered: ParticleDistribution, efficiencies: ReadonlyMap<string, Efficiency>, held: HeldFixed) {
    this.masses = delivered.masses;
    this.held = held;
    const freed = new Map([...efficiencies.keys()].map((name) => [name, new Float64Array(binCount)]));
    this.work = { efficiencies, freed, spare: [] };
  }

  /** Works the balance out, with the elements as the model has them. */
  update(model: SupplyModel, demand: DemandFlows): void {
    const { suctionShare, pathShare, cleared, tankShare, own } = this;
    const total = demand.burn + demand.return;
    const suctionFlow = model.suctionFlow(total);
    const { tanks, main } = model.intake.ways(suctionFlow);
    pathShare.fill(0);
    for (const { stops, flow } of tanks) {
      own.fill(1);
      catchAlong(stops, flow, own, this.work);
      const share = flow / suctionFlow;
      for (let bin = 0; bin < binCount; bin++) {
        pathShare[bin] = (pathShare[bin] as number) + share * (own[bin] as number);
      }
    }
    catchAlong(main.stops, main.flow, pathShare, this.work);
    suctionShare.set(pathShare);
    catchAlong(model.delivery.way(total).stops, total, pathShare, this.work);
    // What relief sends back to the tank; what it sends to the pump's own inlet stays in the round.
    const toTank = suctionFlow - total;
    for (let bin = 0; bin < binCount; bin++) {
      const lost =
        demand.burn + demand.return * (1 - (pathShare[bin] as number)) + toTank * (1 - (suctionShare[bin] as number));
      cleared[bin] = lost;
      tankShare[bin] = this.held === "tank" ? 1 : demand.burn / lost;
    }
  }

  /** How fast a filter catches soil, kg/s; 0 for one that is not followed. */
  rate(name: string): number {
    const freed = this.work.freed.get(name);
    if (!freed) return 0;
    let rate = 0;
    for (let bin = 0; bin < binCount; bin++) {
      rate += (freed[bin] as number) * (this.tankShare[bin] as number) * (this.masses[bin] as number);
    }
    return rate;
  }

  /** What a filter catches, kg, of particles put into the tank at once, kg by size. */
  ofPulse(name: string, masses: Float64Array): number {
    const freed = this.work.freed.get(name);
    if (!freed) return 0;
    return masses.reduce((sum, mass, bin) => sum + (mass * (freed[bin] as number)) / (this.cleared[bin] as number), 0);
  }
}
