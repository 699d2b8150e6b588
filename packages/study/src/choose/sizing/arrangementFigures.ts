import type { System } from "@thirstline/spec/system";
import { check } from "../../check/check.js";
import { life } from "../../life/life.js";

/** What `check` and `life` say of an arrangement. */
export interface ArrangementFigures {
  /** least in hand over the temperatures, at the bad end of what is known, with clean elements */
  readonly inHand: number;
  /** running time to the first limit at the likely figures, s; null where none comes within ten years of duty */
  readonly life: number | null;
}

/**
 * What the sheet will say of an arrangement once it is there: more than the search needs, so for those that are shown.
 *
 * @param system from `arrangedSystem`
 * @param temperatures K, as the search kept to them
 */
export function arrangementFigures(system: System, temperatures: readonly number[]): ArrangementFigures {
  const { points } = check(system, { temperatures });
  return { inHand: Math.min(...points.map(({ inHand }) => inHand.low)), life: life(system).end?.time ?? null };
}
