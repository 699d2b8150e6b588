import jStat from "jstat";
import { quasiRandom } from "../spread/quasiRandom.js";

/** A table of deviates costs a few milliseconds; a page that asks at every keystroke asks for the same ones. */
const kept = new Map<string, readonly (readonly number[])[]>();
const MOST_KEPT = 50;

/**
 * Draws of Student's distribution in several dimensions, spread evenly, the same to the bit for the same seed.
 *
 * @param freedom degrees of freedom
 * @param count how many draws
 */
export function standardDeviates(
  seed: number,
  dimensions: number,
  freedom: number,
  count: number,
): readonly (readonly number[])[] {
  const key = [seed, dimensions, freedom, count].join();
  const known = kept.get(key);
  if (known) return known;
  const at = quasiRandom(seed, dimensions + 1);
  const draws = Array.from({ length: count }, (_, index) => {
    const [wide = 0.5, ...places] = at(index).map((one) => Math.min(1 - 1e-9, Math.max(1e-9, one)));
    const scale = Math.sqrt(jStat.chisquare.inv(wide, freedom) / freedom);
    return places.map((one) => jStat.normal.inv(one, 0, 1) / scale);
  });
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(key, draws);
  return draws;
}
