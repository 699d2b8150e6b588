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
