import { life as followLife } from "@thirstline/core";
import { type System, withDraw } from "@thirstline/spec/system";
import { factsOf } from "../life/life.js";
import { drawsOf } from "./drawsOf.js";

/**
 * How long the elements last in each of many draws of what is uncertain: running time to the first limit, s, Infinity
 * where none is met within ten years of duty, NaN where a draw makes a system that cannot be.
 *
 * A slice of the whole, so that workers can share the work: slices put together are the same to the bit as one run.
 *
 * @param system with spreads
 * @param slice indexes from `from` up to but not including `to`; seed of the whole
 */
export function lifeDraws(
  system: System,
  slice: { readonly from: number; readonly to: number; readonly seed: number },
): Float64Array {
  const draw = drawsOf(system, slice.seed);
  return Float64Array.from({ length: slice.to - slice.from }, (_, at) => {
    const facts = factsOf(withDraw(system, draw(slice.from + at)));
    return "given" in facts ? (followLife(facts.given).end?.time ?? Infinity) : Number.NaN;
  });
}
