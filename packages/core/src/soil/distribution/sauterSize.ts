import { dustPieces } from "./distributionFromMass.js";
import { powerIntegral } from "./powerIntegral.js";
import type { TestDust } from "./testDusts.js";

/**
 * Sauter mean size of a test dust, m: the one size that has the same surface for its volume as the whole dust. It is
 * what a cake's resistance goes by.
 *
 * It leans on the finest few per cent, whose size no limit states: taking the outer slope down to nothing, as here,
 * gives 6.90 um for medium dust; leaving out all below 1 um gives 7.73.
 *
 * @see H. Rumpf, Particle Technology (1990), for the definition
 * @example
 * sauterSize("A3 medium") // 6.895e-6
 */
export function sauterSize(dust: TestDust): number {
  // In a piece the volume is even over log size, so the mean of 1/size is what its -1st power integral says.
  let perSize = 0;
  let volume = 0;
  for (const { from, to, count } of dustPieces(dust)) {
    const ratio = to / from;
    const perUnit = (count / powerIntegral(1, ratio, -3)) * from ** 3;
    volume += perUnit * powerIntegral(1, ratio, 0);
    perSize += (perUnit * powerIntegral(1, ratio, -1)) / from;
  }
  return volume / perSize;
}
