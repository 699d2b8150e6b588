import { suctionAt } from "../../gauge/gaugeFits.js";
import type { Instant } from "../../gauge/Instant.js";
import type { Step } from "../Step.js";
import { inWords } from "../worked.js";
import { elementRatio } from "./elementRatio.js";
import type { FitScene } from "./FitScene.js";

/** An element with its resistance over clean. */
export interface ElementRatio {
  readonly element: string;
  readonly step: Step;
}

const plain = (element: string, value: number) =>
  ({ name: `resistance over clean of ${element}`, value, unit: "1", kind: "plain" }) as const;

/** Every element that the model of a reading knows of, with the one that goes first at a resistance of the table. */
export function sideRatios(fit: FitScene, instant: Instant, ratio: number): readonly ElementRatio[] {
  const { facts, side, given } = fit;
  const path = facts[side];
  const lead = inWords("of the model's table", plain(path.lead, ratio));
  const own = path.names.map((element) => ({ element, step: elementRatio(given, path, element, lead) }));
  if (side === "suction") return own;
  const others = suctionAt(facts, given.fits?.suction ?? null)(instant.time);
  const beside = [...others].map(([element, value]) => ({
    element,
    step: inWords("as its own gauge has it at that time", plain(element, value)),
  }));
  return [...beside, ...own];
}
