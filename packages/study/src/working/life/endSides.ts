import type { LifeEnd } from "@thirstline/core";
import { filtersWithPlaces } from "../figures/filterAt.js";
import { rowFigures } from "../figures/rowFigures.js";
import { ofPart } from "../parts/PartScene.js";
import type { Scene } from "../scene/Scene.js";
import { type LimitSides, limitSides } from "../supply/limitSides.js";

/** Both sides of what ends a life, in a scene with its elements filled; null where one is not known. */
export function endSides(scene: Scene, by: LifeEnd): LimitSides | null {
  if (by.kind === "limit") return limitSides(scene, by.limit);
  const drop =
    rowFigures(scene)
      .find(({ name }) => name === `drop of ${by.element}`)
      ?.make() ?? null;
  const place = filtersWithPlaces(scene).find(({ part }) => part.name === by.element);
  if (!drop || !place) return null;
  const right = ofPart({ scene, path: place.path }, "terminal drop", {
    name: `terminal drop of ${by.element}`,
    value: place.part.terminalDrop ?? Number.NaN,
    unit: "Pa",
    kind: "pressure",
  });
  return { left: drop, right, holds: "<=", words: "the element's drop is its terminal drop" };
}
