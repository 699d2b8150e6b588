import type { System } from "@thirstline/spec/system";
import type { Changeable } from "./changedOf.js";
import { endWord } from "./endWord.js";
import { type Spot, spotsOf } from "./spots.js";

/**
 * Where air is let out, from the tank on: every element from the first changed one, every place where the path has climbed
 * and falls again, the lift pump where air has come through it, and the end.
 */
export function bleedPoints(system: System, changed: readonly Changeable[]): string[] {
  const all = spotsOf(system);
  const first = Math.max(
    0,
    all.findIndex(({ part }) => changed.some((one) => one.part === part)),
  );
  const reached = all.slice(first);
  const suction = reached.filter(({ side }) => side === "suction");
  const delivery = reached.filter(({ side }) => side === "delivery");
  const pump = system.pump.kind === "none" || suction.length === 0 ? [] : ["the lift pump's outlet"];
  return [...placesIn(suction), ...pump, ...placesIn(delivery), endWord(system)];
}

function placesIn(spots: readonly Spot[]): string[] {
  return spots.flatMap((spot, at): string[] => {
    const { part } = spot;
    if (part.part === "filter") return part.style === "in-tank" || part.blocked ? [] : [part.name];
    return isTop(spot, spots.slice(0, at)) ? [`the high point after ${spot.from}`] : [];
  });
}

/** Whether a path that has climbed begins to fall here. */
function isTop({ part }: Spot, before: readonly Spot[]): boolean {
  if (part.part !== "rise" || part.height >= 0) return false;
  const last = before.findLast((one) => one.part.part === "rise")?.part;
  return last?.part === "rise" && last.height > 0;
}
