import { requireFinite } from "../require.js";
import { type Named, nameOf } from "./Named.js";

/** A change of height along the path. */
export interface Rise extends Named {
  readonly kind: "rise";
  /** how far the path climbs, m; negative where it falls */
  readonly height: number;
}

/** Standard acceleration of free fall, m/s2, exact by definition (3rd CGPM, 1901). */
export const FREE_FALL = 9.80665;

/**
 * A climb, or with a negative height a fall: the static head of the fuel in it. It costs the same at any flow.
 *
 * @param given height, m
 * @throws InputError when the height is not a finite number
 * @example
 * rise({ height: 0.9 }) // 7.4 kPa of diesel
 */
export function rise(given: Omit<Rise, "kind">): Rise {
  requireFinite("rise", "height", given.height, "m");
  return { kind: "rise", ...nameOf(given), height: given.height };
}
