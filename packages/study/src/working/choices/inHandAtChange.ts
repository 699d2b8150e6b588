import { life as followLife, type LifeMoment } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import { mapParts } from "../../choose/mapParts.js";
import { filtersWithPlaces } from "../figures/filterAt.js";
import { type LifeScene, lifeScene } from "../life/lifeFacts.js";
import { restriction } from "../life/soilSteps.js";
import type { Step } from "../Step.js";
import { sceneOf } from "../scene/Scene.js";
import { figureStep } from "./leastInHand.js";
import { mapSteps } from "./mapSteps.js";

/**
 * What is in hand at a temperature, K, when the elements have filled for the service interval: `check` of the system with
 * each element as its life leaves it then. Null where a limit comes first, or the life is not known.
 */
export function inHandAtChange(system: System, temperature: number): Step | null {
  const horizon = system.service?.interval;
  if (horizon === undefined) return null;
  // A system of its own, since what a scene keeps of a life goes to its end.
  const scene = sceneOf({ ...system }, {});
  const usual = lifeScene(scene);
  if (!usual) return null;
  const given = { ...usual.facts.given, horizon };
  const found = followLife(given);
  const last = found.moments.at(-1);
  if (found.end || !last) return null;
  const life: LifeScene = { scene, facts: { ...usual.facts, given }, found, last, place: 0 };
  const step = figureStep(filledSystem(system, life, last), "in hand, low end", { temperature });
  if (!step) return null;
  const names = new Map(filtersWithPlaces(scene).map(({ part, path }) => [JSON.stringify(path), part.name]));
  return mapSteps(step, (one) => {
    if (one.origin.by !== "file" || !one.origin.path.endsWith(".restriction")) return one;
    const at = given.elements.findIndex(({ name }) => name === names.get(JSON.stringify(one.part)));
    const own = at < 0 ? null : restriction(life, at);
    // A resistance that rounding puts a hair below the clean one counts as clean.
    return own && own.value === one.value ? { ...one, origin: own.origin } : one;
  });
}

function filledSystem(system: System, { facts }: LifeScene, last: LifeMoment): System {
  const restrictions = new Map(facts.given.elements.map(({ name }, at) => [name, last.restriction[at] ?? 1]));
  return mapParts(system, (part) =>
    part.part === "filter" && restrictions.has(part.name)
      ? { ...part, restriction: Math.max(1, restrictions.get(part.name) ?? 1) }
      : part,
  );
}
