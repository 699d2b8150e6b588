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
