import { radicalInverse } from "./radicalInverse.js";

/**
 * Points that fill a unit cube evenly: Halton's sequence, turned by a seeded shift so that several independent sets can
 * be made and compared.
 *
 * The i-th point of a seed is the same to the bit on any machine: only integers, divisions and one comparison are used.
 *
 * @param seed a whole number; each gives its own shift
 * @param dimensions up to 40
 * @returns a function from a point's index to its coordinates, each 0 or more and below 1
 * @see J. H. Halton, Numer. Math. 2 (1960) 84; R. Cranley and T. N. L. Patterson, SIAM J. Numer. Anal. 13 (1976) 904
 */
export function quasiRandom(seed: number, dimensions: number): (index: number) => number[] {
  const random = seeded(seed);
  const shifts = Array.from({ length: dimensions }, random);
  return (index) =>
    shifts.map((shift, at) => {
      // The first points of large bases lie on a diagonal; starting later mixes them.
      const turned = radicalInverse(index + 409, PRIMES[at] ?? 2) + shift;
      return turned >= 1 ? turned - 1 : turned;
    });
}

const PRIMES = [
  2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97, 101, 103, 107, 109,
  113, 127, 131, 137, 139, 149, 151, 157, 163, 167, 173,
];

/** How many uncertain inputs a draw can have. */
export const MOST_DIMENSIONS = PRIMES.length;

/** Numbers from 0 to below 1 from a 32-bit counter, mixed by multiplications that stay whole (public-domain mulberry32). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
