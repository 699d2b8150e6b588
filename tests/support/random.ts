import fc from "fast-check";

/** A number drawn evenly over its logarithm. */
export function logUniform(from: number, to: number): fc.Arbitrary<number> {
  const logs = { min: Math.log10(from), max: Math.log10(to), noNaN: true };
  return fc.double(logs).map((log) => Math.min(to, Math.max(from, 10 ** log)));
}

/** A number drawn evenly. */
export function uniform(from: number, to: number): fc.Arbitrary<number> {
  return fc.double({ min: from, max: to, noNaN: true });
}

/** Numbers from 0 to below 1, the same for the same seed (public-domain mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
