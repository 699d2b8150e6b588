import type { QuantityKind } from "../../say/units.js";
import { checkDraws, isSuctionUncertain } from "../../spread/checkSpread.js";
import { curveDraws } from "../../spread/curveSpread.js";
import { suctionUnknowns } from "../../spread/suctionUnknowns.js";
import type { Asked } from "../Asked.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { chanceErrorStep, chanceStep, countStep, type Drawn, quantileStep } from "./drawn.js";
import type { FigureMaker } from "./FigureMaker.js";

const SPREAD = "Spread of what is uncertain";
/** Draws when nothing else is asked. */
const DRAWS = 400;
/** Figures that `checkDraws` keeps of one draw, in its order. */
const KEPT = ["vacuum", "feed pressure", "in hand", "broken"] as const;
const shown = {
  vacuum: { unit: "Pa", kind: "vacuum" },
  "feed pressure": { unit: "Pa", kind: "pressure" },
  "in hand": { unit: "1", kind: "ratio" },
} as const satisfies Record<string, { unit: string; kind: QuantityKind }>;
const shares = { low: "10 %", middle: "50 %", high: "90 %" } as const;

/** What draws of the file's spreads make of `check`, and of `curve` at a demand of it. */
export function spreadFigures(scene: Scene, asked: Asked): FigureMaker[] {
  if (!isSuctionUncertain(scene.system)) return [];
  const is = (draw: number) => draw === 1;
  const figure = (name: string, make: () => Step | null): FigureMaker => ({ group: SPREAD, name, make, slow: true });
  const name = "chance that a limit is broken";
  const quantiles = (Object.keys(shown) as (keyof typeof shown)[]).flatMap((kept) =>
    (Object.keys(shares) as (keyof typeof shares)[]).map((which) => {
      const title = `${kept}, ${shares[which]} of draws`;
      return figure(title, () => quantileStep(drawnOf(scene, asked, kept), which, { name: title, ...shown[kept] }));
    }),
  );
  return [
    ...quantiles,
    figure(name, () => chanceStep(drawnOf(scene, asked, "broken"), name, is)),
    figure(`standard error of the ${name}`, () => chanceErrorStep(drawnOf(scene, asked, "broken"), name, is)),
    figure("draws", () => countStep(drawnOf(scene, asked, "vacuum"), "draws")),
  ];
}

function drawnOf(scene: Scene, { draws = DRAWS, seed = 1, at }: Asked, kept: (typeof KEPT)[number]): Drawn {
  const { system, temperature, setting } = scene;
  const demand = setting.demand === null ? {} : { demand: setting.demand };
  // The file's own temperature may be uncertain itself.
  const options = { ...(setting.temperature === null ? {} : { temperatures: [temperature] }), ...demand };
  const slice = { from: 0, to: draws, seed };
  // Those drawn follow the draw's numbers; the others stand half-way.
  const { count, places } = suctionUnknowns(system);
  const moved = places(new Array<number>(count).fill(0));
  const base = { system, seed, only: (place: number) => moved[place] === 0 };
  if (at !== undefined && kept !== "in hand" && kept !== "broken") {
    // Two points of a curve: the first stands at no flow, the last at the demand asked for.
    const to = at > 0 ? at : scene.asked.total;
    const all = scene.kept("curve draws", () => curveDraws(system, { ...options, to, points: 2 }, slice));
    const place = (kept === "vacuum" ? 0 : 2) + (at > 0 ? 1 : 0);
    return { ...base, draws: Float64Array.from({ length: draws }, (_, index) => all[4 * index + place] ?? Number.NaN) };
  }
  const all = scene.kept("check draws", () => checkDraws(system, options, slice));
  const place = KEPT.indexOf(kept);
  return {
    ...base,
    draws: Float64Array.from({ length: draws }, (_, index) => all[KEPT.length * index + place] ?? Number.NaN),
  };
}
