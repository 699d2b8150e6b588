import type { Circuit, Series } from "./Circuit.js";

/**
 * Circuits one after another: they share a flow, and their drops add up. The order does not matter to the total, but it
 * does to the pressure on the way.
 *
 * @param items in the order the fuel meets them; none at all is a path that costs nothing
 * @example
 * series(line({ length: 6, bore: 0.01, roughness: 1.5e-6 }), rise({ height: 0.9 }))
 */
export function series(...items: readonly Circuit[]): Series {
  return { kind: "series", items };
}
