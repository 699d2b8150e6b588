/** Water at one stage that takes it out. */
export interface WaterRow {
  readonly element: string;
  readonly kind: "bowl" | "absorber";
  /** share of the free water that comes to it which it keeps, at full demand, 0 to 1 */
  readonly efficiency: number;
  /** water it keeps over the duty's loads, kg/s of running time */
  readonly rate: number;
  /** running time until its bowl must be drained, s; null for none that fills, or none of a stated size */
  readonly drainEvery: number | null;
  /** running time after which an absorber would be shut by water alone, s; null when it never is, or for a bowl */
  readonly shutAfter: number | null;
}

/** Water in the fuel of the coldest season, when most of it is free. */
export interface WaterAnswer {
  readonly season: string;
  /** K */
  readonly temperature: number;
  /** kg per m3 of fuel as delivered */
  readonly total: number;
  /** null for a fuel whose solubility is not known; then all is taken as free */
  readonly dissolved: number | null;
  readonly free: number;
  /** free water that reaches the engine, kg per m3 of fuel, and as a share of what was delivered free */
  readonly carriedOn: number;
  readonly stages: readonly WaterRow[];
}
