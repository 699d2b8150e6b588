/**
 * The digits of a whole number in a base, mirrored at the point: 6 is 110 in base 2, and becomes 0.011, three eighths. Whole
 * numbers one after another so fall evenly into 0 to 1.
 *
 * Exact but for one division: the same to the bit on any machine.
 *
 * @param index 0 or more
 * @param base 2 or more
 * @see J. H. Halton, Numer. Math. 2 (1960) 84
 * @example
 * radicalInverse(6, 2) // 0.375
 */
export function radicalInverse(index: number, base: number): number {
  let left = index;
  let mirrored = 0;
  let scale = 1;
  while (left > 0) {
    const rest = Math.floor(left / base);
    mirrored = mirrored * base + (left - rest * base);
    scale *= base;
    left = rest;
  }
  return mirrored / scale;
}
