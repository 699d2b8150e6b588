/** 2 / ln 10: the factor that turns Colebrook's "2 log10" into a natural logarithm. */
export const TWO_OVER_LN10 = 2 / Math.LN10;

/**
 * One over the root of the Darcy friction factor, from the Colebrook–White equation.
 *
 * Three logarithms reach rounding for any Reynolds number from 2300 to 1e13: one plain substitution brings any start
 * within 0.3 of the root, and each of the two third-order (Halley) steps that follow cubes the error.
 *
 * @param reynolds Reynolds number; checked by the caller
 * @param relativeRoughness roughness over bore, 0 to 0.05; checked by the caller
 * @returns 1/sqrt(f)
 * @see C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; D. Clamond, Ind. Eng. Chem. Res. 48 (2009) 3665, eq. 1
 */
export function colebrookRoot(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  let root = -TWO_OVER_LN10 * Math.log(rough + smooth * 7);
  for (let step = 0; step < 2; step++) {
    const inside = rough + smooth * root;
    const pull = (TWO_OVER_LN10 * smooth) / inside;
    const miss = root + TWO_OVER_LN10 * Math.log(inside);
    const slope = 1 + pull;
    const bend = (-pull * smooth) / inside;
    root -= miss / (slope - (miss * bend) / (2 * slope));
  }
  return root;
}
