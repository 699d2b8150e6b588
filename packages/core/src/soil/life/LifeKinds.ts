import type { FuelState } from "../../fuel/index.js";
import type { BandEnd } from "../../parts/Band.js";
import type { LimitName, Limits, Supply } from "../../supply/index.js";
import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import type { DemandFlows, HeldFixed } from "./CatchBalance.js";
import type { SoilElement } from "./SoilElement.js";

/** A load an engine is run at. */
export interface DutyLoad {
  /** of the phase's running time, 0 to 1 */
  readonly share: number;
  readonly demand: DemandFlows;
}

/** A stretch of the year with one fuel temperature. */
export interface DutyPhase {
  /** running time in it each year, s */
  readonly duration: number;
  readonly fuel: FuelState;
  /** loads it is run at; their shares of the running time add up to 1 */
  readonly loads: readonly DutyLoad[];
  /** free water in the delivered fuel at this temperature, kg/m3; counts where an element swells, none when left out */
  readonly freeWater?: number;
}

/** A point at which limits are judged: the coldest, the fullest. */
export interface DutyPoint {
  readonly fuel: FuelState;
  /** m3/s, return included */
  readonly demand: number;
}

/** One delivery much dirtier than the rest. */
export interface DirtyDelivery {
  /** running time at which it is taken, s */
  readonly at: number;
  /** m3 */
  readonly volume: number;
  /** what it holds over and above the usual, kg/m3 by size */
  readonly extra: ParticleDistribution;
}

/** What `life` takes. */
export interface LifeGiven {
  /** restrictions of followed filters are replaced by their soil's */
  readonly supply: Supply;
  readonly elements: readonly SoilElement[];
  /** one year, in order; it repeats */
  readonly phases: readonly DutyPhase[];
  readonly delivered: ParticleDistribution;
  readonly held: HeldFixed;
  readonly points: readonly DutyPoint[];
  /** the clean limit is not asked for here */
  readonly limits: Limits;
  /** drop at which an element is to be changed whatever the limits say, Pa by name */
  readonly terminals?: ReadonlyMap<string, number>;
  readonly dirty?: DirtyDelivery;
  /** running time to look ahead, s */
  readonly horizon: number;
  /** which end of every band; `middle` when left out */
  readonly end?: BandEnd;
}

/** What ends a life: a limit of the system, or an element's own terminal drop. */
export type LifeEnd =
  | { readonly kind: "limit"; readonly limit: LimitName }
  | { readonly kind: "terminal drop"; readonly element: string };

/** The elements at a moment. */
export interface LifeMoment {
  /** running time since the start, s */
  readonly time: number;
  /** fuel burnt since the start, m3 */
  readonly burnt: number;
  /** kg on each followed element, in their order */
  readonly soil: readonly number[];
  /** kg of water kept by each; followed only where an element swells, else 0 */
  readonly water: readonly number[];
  /** resistance over clean of each; `PLUGGED` when it passes nothing worth a word */
  readonly restriction: readonly number[];
}

/** How long the elements last. */
export interface Life {
  /** when the first limit is met, which, and at which of the points; null when none is within the horizon */
  readonly end: (LifeMoment & { readonly by: LifeEnd; readonly point: number }) | null;
  /** the way there: the start, each phase's end, and the end */
  readonly moments: readonly LifeMoment[];
}
