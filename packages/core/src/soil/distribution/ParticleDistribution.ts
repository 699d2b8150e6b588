/**
 * Particles in fuel by size, in the bins between `sizeEdges`. Two arrays of one number a bin, so that catching, mixing
 * and settling are array operations.
 */
export interface ParticleDistribution {
  /** particles in each bin, 1/m3 */
  readonly counts: Float64Array;
  /** their mass, kg/m3, as spheres of `DUST_DENSITY` */
  readonly masses: Float64Array;
}

/** Density of test dust, and taken for all soil, kg/m3; mostly silica. ISO 12103-1, from memory. */
export const DUST_DENSITY = 2650;
