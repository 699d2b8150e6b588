import { checkPoint } from "../../check/checkPoint.js";
import { reach } from "../../curve/reach.js";
import type { Asked } from "../Asked.js";
import * as formulas from "../formulas/curves.js";
import { ofPart } from "../parts/PartScene.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { ceiling } from "../supply/ceilings.js";
import { demand } from "../supply/demand.js";
import { asked as askedStep, fromSource, inWords, worked } from "../worked.js";
import type { FigureMaker } from "./FigureMaker.js";
import { filtersWithPlaces } from "./filterAt.js";
import { rowFigures } from "./rowFigures.js";

const CURVE = "Curve";
/** Points of a curve when nothing else is asked. */
const POINTS = 61;
/** A ceiling further off than this many demands is left out. */
const FAR = 4;

/** Where the curve ends, its points, and what elements show when due. */
export function curveFigures(scene: Scene, given: Asked): FigureMaker[] {
  const name = "demand at a point of the curve";
  const terminals = filtersWithPlaces(scene).flatMap(({ part, path }): FigureMaker[] => {
    const { terminalDrop: value } = part;
    if (value === undefined) return [];
    const title = `terminal drop of ${part.name}`;
    const plain = { name: title, value, unit: "Pa", kind: "pressure" } as const;
    return [{ group: part.name, name: title, make: () => ofPart({ scene, path }, "terminal drop", plain) }];
  });
  const own = scene.at({ temperature: null, elements: "now" });
  const now = terminals.length === 0 ? [] : rowFigures(own).filter((one) => one.name.startsWith("drop of "));
  return [
    { group: CURVE, name: "end of the curve", make: () => end(scene, given) },
    { group: CURVE, name, make: () => (given.at === undefined ? null : point(scene, given, given.at)) },
    ...terminals,
    ...now.map((one) => ({ ...one, name: `${one.name} as it is, at the file's own temperature` })),
  ];
}

function end(scene: Scene, { to }: Asked): Step {
  const name = "end of the curve";
  if (to !== undefined) return askedStep("to", { name, value: to, unit: "m3/s", kind: "flow" });
  const { temperature, setting, built } = scene;
  const value = reach(checkPoint(built, temperature, setting.demand));
  const plain = scene.at({ at: null });
  const ends = ["low", "high"] as const;
  const ceilings = ends.flatMap((which) => [
    ceiling(plain.at({ end: which, elements: "clean" }), "vacuum at change", "ceiling clean"),
    ceiling(plain.at({ end: which, elements: "now" }), "vacuum clean", "ceiling at change"),
  ]);
  const near = ceilings.flatMap((step) => (step && step.value <= FAR * scene.asked.total ? [step] : []));
  const b = fromSource("common practice, no source", { name: "how far beyond", value: 1.15, unit: "1", kind: "plain" });
  return worked(formulas.curveEnd, { b, Q: [demand(scene), ...near] }, { name, value });
}

function point(scene: Scene, given: Asked, at: number): Step {
  const Q_e = end(scene, given);
  const n = (given.points ?? POINTS) - 1;
  const i = Math.round((at / Q_e.value) * n);
  const counted = (name: string, value: number) => inWords("counted", { name, value, unit: "1", kind: "plain" });
  return worked(
    formulas.curvePoint,
    { Q_e, i: counted("place of the point, from 0", i), n: counted("steps of the curve", n) },
    { value: at },
  );
}
