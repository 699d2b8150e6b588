import { besselRatio } from "./besselRatio.js";

/** How the fibres of a bed lie: the share of the drag that does not, and does, depend on the neighbours. */
export interface Arrangement {
  readonly fixed: number;
  readonly neighbours: number;
}

/**
 * The form shared by the laws of Spielman and Goren: a fibre in a bed that is itself permeable (Brinkman's equation).
 * With s = sqrt(k)/a, 1/(4c) = fixed + neighbours s K1(1/s)/K0(1/s) is solved for s; the answer is s squared.
 *
 * @param solidity fibre volume over bed volume, less than 1/(4 fixed); checked by the two laws
 * @returns permeability over fibre radius squared, no unit
 * @see L. Spielman and S. L. Goren, Environ. Sci. Technol. 2 (1968) 279
 */
export function spielmanGoren(solidity: number, { fixed, neighbours }: Arrangement): number {
  // With x = 1/s the condition is K1(x)/K0(x) = target x; the left side over x falls steadily, so there is one root.
  const target = (1 / (4 * solidity) - fixed) / neighbours;
  // 1 < K1/K0 < 1 + 1/(2x) for every x, which encloses the root from both sides.
  let low = 1 / target;
  let high = (1 + Math.sqrt(1 + 2 * target)) / (2 * target);
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) return 1 / high ** 2;
    if (besselRatio(middle) > target * middle) low = middle;
    else high = middle;
  }
}
