import type { SupplyModel } from "../../supply/index.js";
import type { Efficiency } from "../capture/Capture.js";
import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import { binCount } from "../distribution/sizeEdges.js";
import { type CatchWork, catchAlong } from "./catchAlong.js";
import { traceFlows } from "./traceFlows.js";

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

/** Flows that differ by less than this, over the total, split alike: no more than the search for a split rounds. */
const ALIKE = 1e-12;

/**
 * The steady soil balance of tank and path: in each size the delivered fuel brings burn c_in, and the tank loses what is
 * burnt and what the path frees on its way round. A tank turns over in hours and elements fill in hundreds, so the
 * steady balance is taken at every moment; `tankBalance` gives the hours before it.
 *
 * `update` works it out for a model and a demand and leaves the figures in the fields; a life asks for it thousands of
 * times. Shares depend on how flows split, not on how large they are, so a split like the last one is not worked out again.
 */
export class CatchBalance {
  /** particles in the tank over those in the delivered fuel, by size */
  readonly tankShare = new Float64Array(binCount);
  /** particles behind the suction side, and at the end of the path, over those in the tank, by size */
  readonly suctionShare = new Float64Array(binCount);
  readonly pathShare = new Float64Array(binCount);
  /** particles where the tanks' paths join over those in the tanks, by size */
  private readonly jointShare = new Float64Array(binCount);
  /** fuel that tank and path free of particles, over the demand, by size */
  private readonly cleared = new Float64Array(binCount);
  private readonly masses: Float64Array;
  private readonly held: HeldFixed;
  private readonly work: CatchWork;
  private readonly own = new Float64Array(binCount);
  /** what each filter catches, kg/s over a demand of 1 m3/s, by name */
  private readonly rates: Map<string, number>;
  private total = 0;
  /** flows over the total: suction, burn, tanks, and every branch on the way */
  private readonly split: number[] = [];
  private readonly traced: number[];

  /**
   * @param delivered fuel, kg/m3 by size
   * @param efficiencies of the followed filters, by name
   */
  constructor(delivered: ParticleDistribution, efficiencies: ReadonlyMap<string, Efficiency>, held: HeldFixed) {
    this.masses = delivered.masses;
    this.held = held;
    const freed = new Map([...efficiencies.keys()].map((name) => [name, new Float64Array(binCount)]));
    this.traced = [];
    this.work = { efficiencies, freed, spare: [], flows: this.traced, at: 0 };
    this.rates = new Map([...efficiencies.keys()].map((name) => [name, 0]));
  }

  /** Works the balance out, with the elements as the model has them. */
  update(model: SupplyModel, demand: DemandFlows): void {
    const { traced } = this;
    const total = demand.burn + demand.return;
    const suctionFlow = model.suctionFlow(total);
    const { tanks, main } = model.intake.ways(suctionFlow);
    const delivery = model.delivery.way(total).stops;
    let at = 0;
    for (const { stops, flow } of tanks) at = traceFlows(stops, flow, traced, at);
    at = traceFlows(main.stops, main.flow, traced, at);
    const branches = traceFlows(delivery, total, traced, at);
    this.total = total;
    if (!this.isNewSplit([suctionFlow, demand.burn, ...tanks.map(({ flow }) => flow)], branches)) return;

    const { suctionShare, pathShare, own, work } = this;
    work.at = 0;
    // A tank fed backward takes of the mixture that the others make where they join.
    const forward = tanks.reduce((sum, { flow }) => sum + Math.max(0, flow), 0);
    pathShare.fill(0);
    for (const { stops, flow } of tanks) {
      own.fill(1);
      catchAlong(stops, flow / total, own, work);
      const share = Math.max(0, flow) / forward;
      for (let bin = 0; bin < binCount; bin++) {
        pathShare[bin] = (pathShare[bin] as number) + share * (own[bin] as number);
      }
    }
    this.jointShare.set(pathShare);
    catchAlong(main.stops, main.flow / total, pathShare, work);
    suctionShare.set(pathShare);
    catchAlong(delivery, 1, pathShare, work);
    this.balance(demand.burn / total, suctionFlow / total - 1, (forward - suctionFlow) / total);
  }

  /** How fast a filter catches soil, kg/s; 0 for one that is not followed. */
  rate(name: string): number {
    return this.total * (this.rates.get(name) ?? 0);
  }

  /** What a filter catches, kg, of particles put into the tank at once, kg by size. */
  ofPulse(name: string, masses: Float64Array): number {
    const freed = this.work.freed.get(name);
    if (!freed) return 0;
    return masses.reduce((sum, mass, bin) => sum + (mass * (freed[bin] as number)) / (this.cleared[bin] as number), 0);
  }

  /**
   * The tank's balance and what each filter catches, all over the demand.
   *
   * @param burn share of the demand
   * @param toTank what relief sends back to the tank; what it sends to the pump's own inlet stays in the round
   * @param backward what runs from the joint into a tank
   */
  private balance(burn: number, toTank: number, backward: number): void {
    const { jointShare, suctionShare, pathShare, cleared, tankShare, masses, work, rates } = this;
    for (let bin = 0; bin < binCount; bin++) {
      const lost =
        burn +
        (1 - burn) * (1 - (pathShare[bin] as number)) +
        toTank * (1 - (suctionShare[bin] as number)) +
        backward * (1 - (jointShare[bin] as number));
      cleared[bin] = lost;
      tankShare[bin] = this.held === "tank" ? 1 : burn / lost;
    }
    for (const [name, freed] of work.freed) {
      let rate = 0;
      for (let bin = 0; bin < binCount; bin++) {
        rate += (freed[bin] as number) * (tankShare[bin] as number) * (masses[bin] as number);
      }
      rates.set(name, rate);
    }
  }

  /** Whether flows split otherwise than last time; keeps the split, and makes the branches' flows shares of the demand. */
  private isNewSplit(flows: readonly number[], branches: number): boolean {
    const { traced, split, total } = this;
    let fresh = split.length !== flows.length + branches;
    split.length = flows.length + branches;
    for (let at = 0; at < split.length; at++) {
      const flow = at < flows.length ? (flows[at] as number) : (traced[at - flows.length] as number);
      const share = flow / total;
      if (at >= flows.length) traced[at - flows.length] = share;
      // Turned round: a share that is no number is never like another.
      if (!(Math.abs(share - (split[at] as number)) <= ALIKE)) fresh = true;
      if (fresh) split[at] = share;
    }
    return fresh;
  }
}
