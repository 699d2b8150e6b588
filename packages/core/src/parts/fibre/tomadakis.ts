/** Where a bed stops to conduct and how fast it gets there: the two constants of a fibre arrangement. */
export interface Percolation {
  /** Porosity below which no path leads through. */
  readonly threshold: number;
  /** Exponent of the approach to it. */
  readonly exponent: number;
}

/**
 * The form shared by the laws of Tomadakis and Sotirchos: conduction of a fibre bed turned into permeability.
 * Two constants say how the fibres lie; `tomadakisThrough` and `tomadakisRandom` supply them and check the solidity.
 *
 * @param solidity fibre volume over bed volume; porosity must be above the threshold
 * @returns permeability over fibre radius squared, no unit
 * @see M. M. Tomadakis and S. V. Sotirchos, AIChE J. 39 (1993) 397; as given by M. M. Tomadakis and T. J. Robertson,
 * J. Compos. Mater. 39 (2005) 163
 */
export function tomadakis(solidity: number, { threshold, exponent }: Percolation): number {
  const porosity = 1 - solidity;
  // log1p keeps the logarithm of a porosity near 1 exact to the last digits.
  const logarithm = Math.log1p(-solidity);
  const open = porosity - threshold;
  return (
    ((porosity / (8 * logarithm ** 2)) * open ** (exponent + 2)) /
    ((1 - threshold) ** exponent * ((exponent + 1) * porosity - threshold) ** 2)
  );
}
