import type { SupplyModel } from "../../supply/index.js";
import type { Efficiency } from "../capture/Capture.js";
import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import { binCount } from "../distribution/sizeEdges.js";
import type { DemandFlows, HeldFixed } from "./BalanceKinds.js";
import { type CatchWork, catchAlong } from "./catchAlong.js";
import { SplitMemory } from "./SplitMemory.js";
import { traceFlows } from "./traceFlows.js";

export type { DemandFlows, HeldFixed } from "./BalanceKinds.js";

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
  /** particles in the tank, kg/m3 by size */
  private readonly inTank = new Float64Array(binCount);
  private readonly bins: number;
  private total = 0;
  private readonly memory = new SplitMemory();
  /** what each filter catches, kg/s over a demand of 1 m3/s, by name: as worked out, and of the load met last */
  private readonly worked = new Map<string, number>();
  private rates: ReadonlyMap<string, number> = this.worked;
  /** flows over the total: suction, burn, tanks, and every branch on the way */
  private readonly split: number[] = [];
  private readonly traced: number[];

  /**
   * @param delivered fuel, kg/m3 by size
   * @param efficiencies of the followed filters, by name
   * @param bins how many sizes to work out, from the smallest up: 1 for what has no sizes, such as water
   */
  constructor(
    delivered: ParticleDistribution,
    efficiencies: ReadonlyMap<string, Efficiency>,
    held: HeldFixed,
    bins = binCount,
  ) {
    this.bins = bins;
    this.masses = delivered.masses;
    this.held = held;
    const freed = new Map([...efficiencies.keys()].map((name) => [name, new Float64Array(binCount)]));
    this.traced = [];
    this.work = { efficiencies, freed, bins, spare: [], flows: this.traced, at: 0 };
  }

  /**
   * Works the balance out, with the elements as the model has them.
   *
   * @param load number of the load, from 0, whose last split this one is likely to be like. Where it is, only the rates
   *   are this load's: what the other fields hold is of the last one worked out
   */
  update(model: SupplyModel, demand: DemandFlows, load = 0): void {
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
    this.share([suctionFlow, demand.burn, ...tanks.map(({ flow }) => flow)], branches);
    const known = this.memory.find(this.split, load);
    this.rates = known ? known.rates : this.worked;
    if (known) return;

    const { suctionShare, pathShare, own, work, bins } = this;
    work.at = 0;
    // A tank fed backward takes of the mixture that the others make where they join.
    const forward = tanks.reduce((sum, { flow }) => sum + Math.max(0, flow), 0);
    pathShare.fill(0);
    for (const { stops, flow } of tanks) {
      own.fill(1);
      catchAlong(stops, flow / total, own, work);
      const share = Math.max(0, flow) / forward;
      for (let bin = 0; bin < bins; bin++) {
        pathShare[bin] = (pathShare[bin] as number) + share * (own[bin] as number);
      }
    }
    this.jointShare.set(pathShare);
    catchAlong(main.stops, main.flow / total, pathShare, work);
    suctionShare.set(pathShare);
    catchAlong(delivery, 1, pathShare, work);
    this.balance(demand.burn / total, suctionFlow / total - 1, (forward - suctionFlow) / total);
    this.memory.keep(this.split, this.worked, load);
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
    const { jointShare, suctionShare, pathShare, cleared, tankShare, inTank, masses, work, bins } = this;
    for (let bin = 0; bin < bins; bin++) {
      const lost =
        burn +
        (1 - burn) * (1 - (pathShare[bin] as number)) +
        toTank * (1 - (suctionShare[bin] as number)) +
        backward * (1 - (jointShare[bin] as number));
      cleared[bin] = lost;
      const share = this.held === "tank" ? 1 : burn / lost;
      tankShare[bin] = share;
      inTank[bin] = share * (masses[bin] as number);
    }
    for (const [name, freed] of work.freed) {
      let rate = 0;
      for (let bin = 0; bin < bins; bin++) rate += (freed[bin] as number) * (inTank[bin] as number);
      this.worked.set(name, rate);
    }
  }

  /** Writes flows and branches' flows as shares of the demand; the branches' own also where they were traced. */
  private share(flows: readonly number[], branches: number): void {
    const { traced, split, total } = this;
    split.length = flows.length + branches;
    for (let at = 0; at < flows.length; at++) split[at] = (flows[at] as number) / total;
    for (let at = 0; at < branches; at++) {
      const own = (traced[at] as number) / total;
      traced[at] = own;
      split[flows.length + at] = own;
    }
  }
}
