import { requireAtLeast } from "../../require.js";
import { settlingSpeed } from "./settlingSpeed.js";

/** How long something takes to settle; or that Stokes's law cannot say. */
export type SettlingTime =
  | {
      readonly known: true;
      /** from the top to the bottom, s; Infinity for what does not sink */
      readonly time: number;
      readonly reynolds: number;
    }
  | { readonly known: false; readonly reason: "Reynolds number above 1"; readonly reynolds: number };

/**
 * How long a drop of water, or a grain, needs to sink from the top of still fuel to its bottom: how long a tank is to stand
 * before it is drained. Half the size takes four times as long, half the depth half as long.
 *
 * Holds where `settlingSpeed` does; fuel that warms or cools stirs itself, and then fine drops stay up longer.
 *
 * @param given depth of the fuel, m; the rest as `settlingSpeed` takes it
 * @throws InputError for a depth below 0, and as `settlingSpeed`
 * @example
 * settlingTime({ depth: 1, size: 1e-4, density: 998, fuel: { density: 825, kinematicViscosity: 3e-6 } }) // 2626 s
 */
export function settlingTime(given: { readonly depth: number } & Parameters<typeof settlingSpeed>[0]): SettlingTime {
  requireAtLeast("settlingTime", "depth", given.depth, 0, "m");
  const found = settlingSpeed(given);
  if (!found.known) return found;
  const { speed, reynolds } = found;
  return { known: true, time: speed > 0 ? given.depth / speed : Infinity, reynolds };
}
