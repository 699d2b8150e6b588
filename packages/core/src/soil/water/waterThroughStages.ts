import { type Named, nameOf } from "../../parts/Named.js";
import { requireAtLeast, requireMoreThan } from "../../require.js";
import { bowlDrainInterval } from "./bowlDrainInterval.js";
import { type Separation, separationAt } from "./separationAt.js";

/** A stage that takes free water out: a separator with a bowl, or an element that absorbs. */
export interface WaterStage extends Named {
  readonly kind: "separator" | "absorber";
  readonly separation: Separation;
  /** of a separator: up to where it must be drained, m3 */
  readonly bowl?: number;
}

/** What one stage did with the water. */
export interface WaterStageResult extends Named {
  readonly kind: WaterStage["kind"];
  /** share of the free water that came, 0 to 1, at this flow */
  readonly efficiency: number;
  /** kg per m3 of fuel: into the bowl, or into the element */
  readonly removed: number;
  /** free water that goes on, kg per m3 of fuel */
  readonly carriedOn: number;
  /** running time until the bowl is full, s; Infinity when no water comes; left out without a bowl */
  readonly drainEvery?: number;
}

/**
 * Free water from stage to stage. Dissolved water passes them all.
 *
 * @param given free water, kg per m3 of fuel, from `freeWater`; flow, m3/s; stages from the tank on
 * @throws InputError for water below 0 or a flow not above 0, and as `separationAt` and `bowlDrainInterval`
 * @see `separationAt` for how efficiency falls with flow
 * @example
 * waterThroughStages({ free: 0.07, flow: 9e-5, stages: [{ kind: "separator", separation, bowl: 2e-4 }] })
 */
export function waterThroughStages(given: {
  readonly free: number;
  readonly flow: number;
  readonly stages: readonly WaterStage[];
}): WaterStageResult[] {
  requireAtLeast("waterThroughStages", "free", given.free, 0, "kg/m3");
  requireMoreThan("waterThroughStages", "flow", given.flow, 0, "m3/s");
  let carriedOn = given.free;
  return given.stages.map((stage) => {
    const efficiency = separationAt(stage.separation, given.flow);
    const removed = efficiency * carriedOn;
    carriedOn -= removed;
    const result = { ...nameOf(stage), kind: stage.kind, efficiency, removed, carriedOn };
    if (stage.bowl === undefined) return result;
    return { ...result, drainEvery: bowlDrainInterval({ bowl: stage.bowl, separated: removed, flow: given.flow }) };
  });
}
