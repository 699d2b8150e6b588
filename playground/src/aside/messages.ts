import type { System } from "@thirstline/spec/system";
import type { LifeAnswer } from "@thirstline/study";
import type { SoilTargets } from "../life/SoilTargets.js";
import type { MapPoint } from "../map/MapPoint.js";

/** What the page has worked out beside itself: one of these at a time for each worker. */
export type Task =
  /** ceilings over fuel temperatures, K */
  | { readonly kind: "map"; readonly system: System; readonly temperatures: readonly number[] }
  /** how long the elements last; then, where anything is uncertain, the same in many draws from a seed */
  | { readonly kind: "life"; readonly system: System; readonly draws: number; readonly seed: number };

/** What comes of a task; a part of it may come before the whole. */
export type Outcome =
  | { readonly kind: "map"; readonly points: readonly MapPoint[] }
  | { readonly kind: "life"; readonly answer: LifeAnswer; readonly soil: SoilTargets | null; readonly drawn: boolean }
  /** s, the first so many of all draws; see `lifeDraws` of the study */
  | { readonly kind: "draws"; readonly lives: Float64Array };

/** A task as it is sent; a later one puts an end to it. */
export interface Sent {
  readonly id: number;
  readonly task: Task;
}

/** An outcome as it comes back. `done`: nothing more comes of that task. */
export interface Returned {
  readonly id: number;
  readonly outcome: Outcome;
  readonly done: boolean;
}
