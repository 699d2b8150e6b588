import type { Efficiency } from "../capture/Capture.js";
import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";

/** A tank kept at one level by deliveries, its fuel well mixed, and what passes through it; flows in m3/s. */
export interface TankBalanceGiven {
  /** fuel in the tank, m3 */
  readonly volume: number;
  /** what the engine burns, and deliveries replace */
  readonly burn: number;
  /** what comes back from the injection pump, having passed the whole path; 0 when left out */
  readonly returned?: number;
  /** what the lift pump sends back to the tank, having passed the suction side only; 0 when left out */
  readonly relief?: number;
  readonly delivered: ParticleDistribution;
  /** what the tank holds at the start */
  readonly start: ParticleDistribution;
  /** of everything before the lift pump */
  readonly suction: Efficiency;
  /** of everything behind it */
  readonly delivery: Efficiency;
}

/** Soil moved since the start, kg. What was delivered and was in the tank is now caught, burnt or in the tank. */
export interface TankBalanceMoved {
  readonly delivered: number;
  readonly caughtBySuction: number;
  readonly caughtByDelivery: number;
  /** passed the whole path with the fuel that was burnt */
  readonly burnt: number;
}

/** A tank's soil over time. */
export interface TankBalance {
  /** what the tank tends to; a bin that nothing fills and nothing empties stays as it is */
  readonly steady: ParticleDistribution;
  /** what the tank holds after a time, s */
  tankAt(time: number): ParticleDistribution;
  /** soil moved up to a time, s */
  movedBy(time: number): TankBalanceMoved;
}
