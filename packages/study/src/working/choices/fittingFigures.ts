import type { FigureMaker } from "../figures/FigureMaker.js";
import { rowFigures } from "../figures/rowFigures.js";
import { highestCeiling } from "../formulas/limits.js";
import type { Step } from "../Step.js";
import { sceneOf } from "../scene/Scene.js";
import { fromSource, worked } from "../worked.js";
import type { SideGiven } from "./SideGiven.js";

const GROUP = "Whether it fits";

/** The flow an element is asked to let through, and what its maker allows. */
export function fittingFigures(given: SideGiven): FigureMaker[] {
  const { element } = given;
  const most = element?.mostFlow;
  return [
    { group: GROUP, name: "most flow at the places", make: () => mostFlow(given), slow: true },
    {
      group: GROUP,
      name: "most flow allowed",
      make: () =>
        most === undefined || !element
          ? null
          : fromSource(`the element catalogue, "${element.name}"`, {
              name: "most flow its maker allows",
              value: most,
              unit: "m3/s",
              kind: "flow",
            }),
    },
  ];
}

function mostFlow({ system, at, temperatures }: SideGiven): Step | null {
  const names = new Set(at.map((name) => `flow in ${name}`));
  const Q = temperatures.flatMap((temperature) =>
    rowFigures(sceneOf(system, { temperature, elements: "now" }))
      .filter(({ name }) => names.has(name))
      .flatMap(({ make }) => make() ?? []),
  );
  return Q.length === 0 ? null : worked(highestCeiling, { Q }, { name: "most flow at the places" });
}
