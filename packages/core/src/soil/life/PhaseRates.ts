import { SupplyModel } from "../../supply/index.js";
import type { Efficiency } from "../capture/Capture.js";
import { binCount } from "../distribution/sizeEdges.js";
import { CatchBalance } from "./CatchBalance.js";
import type { Vector } from "./dormandPrince.js";
import type { Fouling } from "./Fouling.js";
import type { DutyLoad, DutyPhase, LifeGiven } from "./LifeKinds.js";
import type { SoilElement } from "./SoilElement.js";

/**
 * A pressure no fuel system holds, Pa. Where all the fuel would have to pass plugged elements the state makes no sense, and
 * how it splits over them least of all; every limit is broken long before.
 */
const ABSURD = 1e8;

/** Resistance over clean from which an element may be what makes it absurd. */
const HEAVY = 1e4;

/** How fast elements fill in one phase of the year. */
export class PhaseRates {
  /** fuel burnt, m3/s, over the phase's loads */
  readonly burn: number;
  private readonly phase: DutyPhase;
  private readonly elements: readonly SoilElement[];
  private readonly fouling: Fouling;
  private readonly model: SupplyModel;
  private readonly soil: CatchBalance;
  private readonly water: CatchBalance | null;
  /** largest demand of the loads, m3/s */
  private readonly most: number;

  constructor(given: LifeGiven, phase: DutyPhase, fouling: Fouling) {
    const { supply, elements, delivered, held, end = "middle" } = given;
    this.phase = phase;
    this.elements = elements;
    this.fouling = fouling;
    this.burn = phase.loads.reduce((sum, load) => sum + load.share * load.demand.burn, 0);
    this.most = Math.max(...phase.loads.map(({ demand }) => demand.burn + demand.return));
    this.model = new SupplyModel(supply, { fuel: phase.fuel, passage: "smooth", end });
    this.soil = new CatchBalance(delivered, byName(elements, catches), held);
    this.water = fouling.wet
      ? new CatchBalance(waterOf(phase.freeWater ?? 0), byName(elements, separates), held, 1)
      : null;
  }

  /** Writes the rates at a state, kg/s; false where the state makes no sense. */
  at(state: Vector, into: Vector): boolean {
    // A trial step may overshoot into less soil than none.
    for (let at = 0; at < state.length; at++) if ((state[at] as number) < 0) return false;
    const { elements, soil, water } = this;
    const { loads } = this.phase;
    into.fill(0);
    const restrictions = this.fouling.restrictions(state);
    this.model.restrict(restrictions);
    if (heaviest(restrictions) > HEAVY && !this.canPass()) return false;
    for (let load = 0; load < loads.length; load++) {
      const { share, demand } = loads[load] as DutyLoad;
      soil.update(this.model, demand, load);
      water?.update(this.model, demand, load);
      for (let at = 0; at < elements.length; at++) {
        const { name } = elements[at] as SoilElement;
        into[at] = (into[at] as number) + share * soil.rate(name);
        if (!water) continue;
        const wet = elements.length + at;
        into[wet] = (into[wet] as number) + share * water.rate(name);
      }
    }
    for (let at = 0; at < into.length; at++) if (!Number.isFinite(into[at] as number)) return false;
    return true;
  }

  /** Whether the largest load could be pressed through at all; turned round, so that no number is no. */
  private canPass(): boolean {
    const { model, most } = this;
    return model.vacuum(model.suctionFlow(most)) < ABSURD && model.delivery.loss(most) < ABSURD;
  }

  /** A state after particles put into the tank at once, kg by size, have left it: within hours, so at once here. */
  afterPulse(state: Vector, masses: Float64Array): Vector {
    this.model.restrict(this.fouling.restrictions(state));
    const { soil } = this;
    const { loads } = this.phase;
    // As a load of its own, so that all of it is worked out.
    soil.update(this.model, (loads[0] as DutyLoad).demand, loads.length);
    const after = state.slice();
    this.elements.forEach(({ name }, at) => {
      after[at] = (state[at] as number) + soil.ofPulse(name, masses);
    });
    return after;
  }
}

function heaviest(restrictions: ReadonlyMap<string, number>): number {
  let most = 1;
  for (const one of restrictions.values()) most = Math.max(most, one);
  return most;
}

function byName(
  elements: readonly SoilElement[],
  of: (element: SoilElement) => Efficiency | null,
): ReadonlyMap<string, Efficiency> {
  return new Map(
    elements.flatMap((element) => {
      const efficiency = of(element);
      return efficiency ? [[element.name, efficiency] as const] : [];
    }),
  );
}

function catches({ efficiency }: SoilElement): Efficiency | null {
  return efficiency;
}

// Water needs no sizes: what is known of it is a share of it all, so all of it goes into the first bin.

function separates({ separates: share }: SoilElement): Efficiency | null {
  return share === undefined ? null : new Float64Array(binCount).fill(share);
}

function waterOf(free: number) {
  const masses = new Float64Array(binCount);
  masses[0] = free;
  return { counts: new Float64Array(binCount), masses };
}
