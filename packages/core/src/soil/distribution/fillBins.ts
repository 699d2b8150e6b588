import { DUST_DENSITY, type ParticleDistribution } from "./ParticleDistribution.js";
import { powerIntegral } from "./powerIntegral.js";
import { binCount, binOf, sizeEdges } from "./sizeEdges.js";

/** Particles between two sizes whose number a size falls as size^-(steepness + 1). */
export interface PowerPiece {
  /** m */
  readonly from: number;
  /** m, more than `from` */
  readonly to: number;
  /** of the cumulative count over size, both logarithmic; 3 puts the same mass in every doubling of size */
  readonly steepness: number;
  /** particles in the piece, 1/m3 */
  readonly count: number;
}

/** Mass of one sphere over the cube of its diameter, kg/m3. */
export const SPHERE = (Math.PI / 6) * DUST_DENSITY;

/** A distribution of no particles. */
export function noParticles(): ParticleDistribution {
  return { counts: new Float64Array(binCount), masses: new Float64Array(binCount) };
}

/**
 * Shares pieces out over the bins: counts and masses are the exact integrals, also in a bin that a piece half fills.
 */
export function fillBins(pieces: readonly PowerPiece[]): ParticleDistribution {
  const filled = noParticles();
  for (const piece of pieces) {
    if (piece.count > 0) addPiece(filled, piece);
  }
  return filled;
}

function addPiece({ counts, masses }: ParticleDistribution, { from, to, steepness, count }: PowerPiece): void {
  // Sizes are counted in lengths of `from`, so that no power of a small number in metres can leave the range of
  // numbers.
  const perUnit = count / powerIntegral(1, to / from, -steepness);
  const last = binOf(to);
  for (let bin = binOf(from); bin <= last; bin++) {
    const low = Math.max(1, (sizeEdges[bin] ?? 0) / from);
    const high = Math.min(to, sizeEdges[bin + 1] ?? 0) / from;
    if (!(high > low)) continue;
    counts[bin] = (counts[bin] ?? 0) + perUnit * powerIntegral(low, high, -steepness);
    masses[bin] = (masses[bin] ?? 0) + perUnit * SPHERE * from ** 3 * powerIntegral(low, high, 3 - steepness);
  }
}
