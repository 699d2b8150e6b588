import { roomMap } from "../../gauge/elementsNow.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import { rowFigures } from "../figures/rowFigures.js";
import { roomUsed, timesDemand } from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { sceneOf } from "../scene/Scene.js";
import { demand } from "../supply/demand.js";
import { inWords, worked } from "../worked.js";
import { elementRatio } from "./elementRatio.js";
import { fittedState } from "./fittedSteps.js";
import { leadNow, type SoilScene } from "./gaugeScenes.js";
import { metStep, metTemperature } from "./limitSteps.js";
import { toldWith } from "./toldWith.js";

/** Figures of every element of a gauge: how plugged it is, what it costs, how much room is left. */
export function elementFigures(scene: SoilScene): FigureMaker[] {
  const { fits, side, best, given } = scene;
  const path = fits.facts[side];
  const map = best.kept("room map", () => roomMap(fits.facts, side));
  const limits = map && { given, map, restrictions: path.at };
  const f = () => fittedState(best).demand;
  const lead = (which: "low" | "middle" | "high") => leadNow(scene, which);
  const clean = () => inWords("a clean element", { name: "resistance over clean", value: 1, unit: "1", kind: "plain" });
  const T = () =>
    limits
      ? metTemperature(limits, f())
      : inWords("the file's own, since no limit is judged", {
          name: "temperature",
          value: fits.facts.built.temperature,
          unit: "K",
          kind: "temperature",
        });
  const drop = (element: string, r: Step | null) => r && dropAt(scene, element, { r, f: f(), T: T() });
  return path.names.flatMap((element) => {
    const figure = figuresIn(element, true);
    const ratio = (which: "low" | "middle" | "high") => () => {
      const r = lead(which);
      return r && elementRatio(given, path, element, r);
    };
    const name = `resistance over clean of ${element}`;
    return [
      figure(`${name}, low end`, ratio("low")),
      figure(name, ratio("middle")),
      figure(`${name}, high end`, ratio("high")),
      figure(`drop of ${element}, clean`, () => drop(element, clean())),
      figure(`drop of ${element}`, () => drop(element, lead("middle"))),
      figure(`room used up of ${element}`, () => {
        const [c, d] = [drop(element, clean()), drop(element, lead("middle"))];
        const e = limits && drop(element, metStep(limits, f()));
        if (!c || !d || !e) return null;
        const none = { name: "room used up", value: 1, unit: "1", kind: "ratio" } as const;
        return e.value > c.value ? worked(roomUsed, { d, c, e }) : inWords("there is no room at all", none, [c, e]);
      }),
    ];
  });
}

/** Drop of an element at full demand, tanks low, when the one that goes first is so far. */
function dropAt(
  { given, fits, side, best }: SoilScene,
  element: string,
  { r, f, T }: { readonly r: Step; readonly f: Step; readonly T: Step },
): Step | null {
  const path = fits.facts[side];
  return best.kept(`drop ${element} ${r.value}`, () => {
    const own = path.names.map((name) => ({ name, step: elementRatio(given, path, name, r) }));
    const full = demand(sceneOf(given.system, { temperature: T.value }));
    const Q = worked(timesDemand, { f, Q: full });
    const scene = sceneOf(given.system, {
      temperature: T.value,
      demand: Q.value,
      elements: "now",
      restrictions: new Map(own.map(({ name, step }) => [name, step.value])),
    });
    const found =
      rowFigures(scene)
        .find(({ name }) => name === `drop of ${element}`)
        ?.make() ?? null;
    return found && toldWith(found, { demand: Q, temperature: T, ratios: own.map(({ step }) => step) });
  });
}
