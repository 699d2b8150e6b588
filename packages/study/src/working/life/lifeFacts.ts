import { life as followLife, type Life, type LifeMoment } from "@thirstline/core";
import { factsOf, type LifeFacts } from "../../life/factsOf.js";
import type { Scene } from "../scene/Scene.js";

/** A life as core followed it, with what it was followed from. */
export interface LifeScene {
  readonly scene: Scene;
  readonly facts: LifeFacts;
  readonly found: Life;
  /** where it ends, or the last moment looked at */
  readonly last: LifeMoment;
  /** the duty point it is judged at */
  readonly place: number;
}

/** The life of a scene's system; null where something it rests on is not stated. */
export function lifeScene(scene: Scene): LifeScene | null {
  return scene.kept("life", () => {
    const facts = factsOf(scene.system);
    if ("reasons" in facts) return null;
    const found = followLife(facts.given);
    const last = found.end ?? (found.moments.at(-1) as LifeMoment);
    return { scene, facts, found, last, place: found.end?.point ?? 0 };
  });
}

/** The moments on the way and the last, none twice, as an answer's trace has them. */
export function momentsOf({ found: { moments, end } }: Pick<LifeScene, "found">): LifeMoment[] {
  return [...(end ? moments.filter(({ time }) => time < end.time) : moments), ...(end ? [end] : [])];
}

/** The system at a duty point with its elements filled as at a moment. */
export function filledScene(
  { scene, facts, place }: Omit<LifeScene, "last" | "found">,
  moment: LifeMoment | null,
): Scene {
  const restrictions = new Map(
    facts.given.elements.map(({ name }, at) => [name, moment === null ? 1 : (moment.restriction[at] ?? 1)]),
  );
  const temperature = facts.duty.points[place]?.temperature ?? facts.built.temperature;
  return scene.at({ temperature, demand: null, at: null, pumped: null, elements: "now", restrictions });
}
