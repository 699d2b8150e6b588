import type { Circuit } from "../circuit/Circuit.js";
import { requireAtLeast } from "../require.js";

/** How air gets in as fuel goes out: freely, at a vacuum the vent needs, or not at all. */
export type Vent =
  | { readonly kind: "open" }
  | { readonly kind: "spring" /** vacuum at which it cracks, Pa */; readonly opening: number }
  | { readonly kind: "blocked" };

/** A tank, and the path from its pick-up to where several tanks join. */
export interface Tank {
  readonly name?: string;
  /** level of the fuel over the pick-up, m */
  readonly depth: number;
  readonly vent: Vent;
  /** from the pick-up to the joint with other tanks; null when it is the only one */
  readonly path: Circuit | null;
}

/**
 * A tank. Its rises start at the pick-up, and the fuel standing over it helps the pump.
 *
 * @param given depth, m; vent (open when left out); path to the joint, for one of several tanks; name
 * @throws InputError naming the field
 * @example
 * tank({ depth: 0.2 })
 */
export function tank(given: {
  readonly name?: string;
  readonly depth: number;
  readonly vent?: Vent;
  readonly path?: Circuit | null;
}): Tank {
  const vent = given.vent ?? { kind: "open" };
  requireAtLeast("tank", "depth", given.depth, 0, "m");
  if (vent.kind === "spring") requireAtLeast("tank", "vent.opening", vent.opening, 0, "Pa");
  return {
    ...(given.name === undefined ? {} : { name: given.name }),
    depth: given.depth,
    vent,
    path: given.path ?? null,
  };
}
