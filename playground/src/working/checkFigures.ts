import { type CheckPoint, quantity, type UnitSystem } from "@thirstline/study";
import type { Leaf } from "@thirstline/study/working";
import type { FigureShown } from "../words/wordsHtml.js";
import { asButtons, type LeafOf, leavesIn } from "./liveFigures.js";

const own = (figure: string): Leaf => ({ figure, asked: {} });

/** What a verdict quotes by the figure's own name. */
const SAME = ["limit at change", "feed limit", "vapour pressure", "lowest pressure"];

/** The live figures of the sheet's verdict. */
export function checkFigures(point: CheckPoint, units: UnitSystem): FigureShown {
  return asButtons(checkLeaf(point, units));
}

/** The workings of a verdict's figures: it quotes the bad end where that decides. */
export function checkLeaf({ vacuum, vacuumNow }: CheckPoint, units: UnitSystem): LeafOf {
  const live = leavesIn("check", {
    "in hand": own("in hand, low end"),
    ...Object.fromEntries(SAME.map((name) => [name, own(name)])),
  });
  const vacuums = [
    { figure: "vacuum", value: vacuum.middle },
    { figure: "vacuum now", value: vacuumNow?.middle },
    { figure: "vacuum, high end", value: vacuum.high },
  ];
  return (key, text) => {
    if (key !== "vacuum") return live(key, text);
    const meant = vacuums.find(({ value }) => value !== undefined && quantity(value, "vacuum", units) === text);
    return own(meant?.figure ?? "vacuum");
  };
}
