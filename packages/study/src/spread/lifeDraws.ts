import { life as followLife } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import { factsOf } from "../life/factsOf.js";
import { drawsOf } from "./drawsOf.js";
import { ifPossible } from "./ifPossible.js";
import { unknownsOf } from "./unknownsOf.js";

/** Which of many draws: from index `from` up to but not including `to`, of the whole that a seed makes. */
export interface Slice {
  readonly from: number;
  readonly to: number;
  readonly seed: number;
}

/**
 * How long the elements last in each of many draws of what is uncertain: running time to the first limit, s, Infinity
 * where none is met within ten years of duty, NaN where a draw makes a system that cannot be.
 *
 * A slice of the whole, so that workers can share the work: slices put together are the same to the bit as one run.
 */
export function lifeDraws(system: System, slice: Slice): Float64Array {
  const unknowns = unknownsOf(system);
  const draw = drawsOf(unknowns.count, slice.seed);
  return Float64Array.from({ length: slice.to - slice.from }, (_, at) => {
    const drawn = unknowns.drawn(draw(slice.from + at));
    return ifPossible(Number.NaN, () => {
      const facts = factsOf(drawn.system, drawn.guess);
      return "given" in facts ? (followLife(facts.given).end?.time ?? Infinity) : Number.NaN;
    });
  });
}

/** Whether anything of a system is uncertain, so that draws can differ. */
export function isUncertain(system: System): boolean {
  return unknownsOf(system).count > 0;
}
