import { life as followLife, type LifeMoment } from "@thirstline/core";
import { partialChanges } from "../../life/partialChanges.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { shareOfFlow } from "./dropSteps.js";
import { endOfLife } from "./endStep.js";
import { filledScene, type LifeScene } from "./lifeFacts.js";

const GROUP = "Changing one alone";

/** What changing one element alone would do, at the end of a life. */
export function partialFigures(life: LifeScene): FigureMaker[] {
  const { scene, facts, found } = life;
  const { end } = found;
  if (!end || end.time === 0) return [];
  const changes = scene.kept("partial changes", () => partialChanges(facts.system, facts.given, end));
  return changes.flatMap(({ element, shares }): FigureMaker[] => {
    const next = nextLife(life, element);
    const bank = shares.map((one) => one.element);
    const title = `next end with ${element} alone new`;
    return [
      { group: GROUP, name: title, make: () => endOfLife(next, title) },
      ...shares.flatMap((share): FigureMaker[] => {
        const before = `share of flow of ${share.element} before ${element} is changed`;
        const after = `share of flow of ${share.element} with ${element} new`;
        const start = next.found.moments[0] ?? null;
        return [
          {
            group: GROUP,
            name: before,
            make: () => shareOfFlow(filledScene(life, end), share.element, bank, { name: before, value: share.before }),
          },
          {
            group: GROUP,
            name: after,
            make: () => shareOfFlow(filledScene(life, start), share.element, bank, { name: after, value: share.after }),
          },
        ];
      }),
    ];
  });
}

/** The life that follows when one element is new and the others stay as they are at the end. */
function nextLife(life: LifeScene, name: string): LifeScene {
  return life.scene.kept(`life with ${name} new`, () => {
    const { facts, found } = life;
    const { end } = found;
    const elements = facts.given.elements.map((element, at) => ({
      ...element,
      soil: element.name === name ? 0 : (end?.soil[at] ?? 0),
      water: element.name === name ? 0 : (end?.water[at] ?? 0),
    }));
    const { dirty: _, ...rest } = facts.given;
    const given = { ...rest, elements };
    const next = followLife(given);
    const last = next.end ?? (next.moments.at(-1) as LifeMoment);
    return { scene: life.scene, facts: { ...facts, given }, found: next, last, place: next.end?.point ?? life.place };
  });
}
