import type { System } from "@thirstline/spec/system";
import { isSoiled } from "../../check/isUnsure.js";
import { partsOf } from "../../check/partsOf.js";
import { ifPossible } from "../../spread/ifPossible.js";
import type { Asked } from "../Asked.js";
import { sceneOf } from "../scene/Scene.js";
import { curveFigures } from "./curveFigures.js";
import type { FigureMaker } from "./FigureMaker.js";
import { fuelFigures } from "./fuelFigures.js";
import { lifeFigures } from "./lifeFigures.js";
import { ceilingFigures, pressureFigures } from "./pressureFigures.js";
import { largestShare, rowFigures } from "./rowFigures.js";
import { spreadFigures } from "./spreadFigures.js";

/** Makers of one system, by what they were asked with. */
type Kept = WeakMap<System, Map<string, readonly FigureMaker[]>>;

const pressures: Kept = new WeakMap();
const lives: Kept = new WeakMap();
/** How many ways of asking are kept of one system: a curve asks at many demands. */
const KEPT = 8;

/** Every figure of `check` and `curve` with how it is made, in the order of lists; kept, since figures share steps. */
export function figureMakers(system: System, asked: Asked): readonly FigureMaker[] {
  return keptIn(pressures, system, asked, () => made(system, asked));
}

/** Every figure of `life`; none of a system that core refuses to follow. A life is worked out to tell which there are. */
export function lifeMakers(system: System, asked: Asked): readonly FigureMaker[] {
  return keptIn(lives, system, asked, () => ifPossible([], () => lifeFigures(sceneOf(system, {}), asked)));
}

function keptIn(kept: Kept, system: System, asked: Asked, make: () => readonly FigureMaker[]): readonly FigureMaker[] {
  const ways = kept.get(system) ?? new Map<string, readonly FigureMaker[]>();
  kept.set(system, ways);
  const key = JSON.stringify(asked);
  const makers = ways.get(key) ?? make();
  if (ways.size >= KEPT) ways.clear();
  ways.set(key, makers);
  return makers;
}

function made(system: System, asked: Asked): FigureMaker[] {
  const { temperature, demand, at } = asked;
  const scene = sceneOf(system, { temperature: temperature ?? null, demand: demand ?? null, at: at ?? null });
  const now = scene.at({ elements: "now" });
  const soiled = partsOf(now.supply).some(isSoiled);
  return [
    ...pressureFigures(scene),
    ...ceilingFigures(scene),
    ...fuelFigures(scene),
    { name: "largest share", group: "Each part", make: () => largestShare(now) },
    ...rowFigures(scene),
    ...(soiled ? rowFigures(now).map((one) => ({ ...one, name: `${one.name} as it is` })) : []),
    ...curveFigures(scene, asked),
    ...spreadFigures(scene, asked),
  ];
}
