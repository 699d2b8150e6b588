import { type CheckPoint, quantity, type UnitSystem } from "@thirstline/study";
import type { Leaf } from "@thirstline/study/working";
import type { FigureShown } from "../words/wordsHtml.js";
import { asButtons, leavesIn } from "./liveFigures.js";

const own = (figure: string): Leaf => ({ figure, asked: {} });

/** What a verdict quotes by the figure's own name. */
const SAME = ["limit at change", "feed limit", "vapour pressure", "lowest pressure"];

/** The live figures of a verdict, which quotes the bad end where that decides. */
export function checkFigures({ vacuum, vacuumNow }: CheckPoint, units: UnitSystem): FigureShown {
  const live = leavesIn("check", {
    "in hand": own("in hand, low end"),
    ...Object.fromEntries(SAME.map((name) => [name, own(name)])),
  });
  const vacuums = [
    { figure: "vacuum", value: vacuum.middle },
    { figure: "vacuum now", value: vacuumNow?.middle },
    { figure: "vacuum, high end", value: vacuum.high },
  ];
  return asButtons((key, text) => {
    if (key !== "vacuum") return live(key, text);
    const meant = vacuums.find(({ value }) => value !== undefined && quantity(value, "vacuum", units) === text);
    return own(meant?.figure ?? "vacuum");
  });
}
