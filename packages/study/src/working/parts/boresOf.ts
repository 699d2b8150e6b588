import type { Step } from "../Step.js";
import { boreOf } from "./boreSteps.js";
import { throatOf } from "./otherDrops.js";
import type { PartScene } from "./PartScene.js";

/** The bores of a part, as core's profile takes them; null where none is stated. */
export interface Bores {
  /** in which the fuel leaves it */
  readonly behind: Step | null;
  /** in which its Reynolds number is taken */
  readonly throat: Step | null;
}

/** The bores of a part of the path. */
export function boresOf(given: PartScene): Bores {
  const { part } = given;
  switch (part.part) {
    case "line":
    case "fitting": {
      const bore = boreOf({ ...given, part });
      return { behind: bore, throat: bore };
    }
    case "orifice":
      return { behind: null, throat: throatOf({ ...given, part }) };
    case "filter":
    case "rise":
    case "valve":
    case "strainer":
    case "bank":
      return { behind: null, throat: null };
  }
}
