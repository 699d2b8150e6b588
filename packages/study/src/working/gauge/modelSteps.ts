import type { System } from "@thirstline/spec/system";
import { retold } from "../choices/retold.js";
import type { Step } from "../Step.js";
import { type Scene, type Setting, sceneOf } from "../scene/Scene.js";

/** A system with its tanks at another level than low, and how its steps are told. */
export interface AtLevel {
  readonly scene: Scene;
  /** with the level said to be the one noted, or taken */
  readonly told: (step: Step) => Step;
}

/** Systems with another level, by the level: readings share them. */
const leveled = new WeakMap<System, Map<string, System>>();

/**
 * A system with its tanks at the level of a reading.
 *
 * @param depth of fuel over the pick-up, m; half-way between full and low when left out
 * @param change of the scene's setting; elements are as the file states, if it does not say
 */
export function atLevel(system: System, depth: number | undefined, change: Partial<Setting>): AtLevel {
  const known = leveled.get(system) ?? new Map<string, System>();
  leveled.set(system, known);
  const key = String(depth);
  const own = known.get(key) ?? {
    ...system,
    tanks: system.tanks.map((tank) => ({ ...tank, lowDepth: depth ?? (tank.fullDepth + tank.lowDepth) / 2 })),
  };
  known.set(key, own);
  const words = depth === undefined ? "a level half-way between full and low" : "the level noted at the reading";
  return {
    scene: sceneOf(own, { elements: "now", ...change }),
    told: (step) => retold(step, { file: system, system: own, change: words }),
  };
}
