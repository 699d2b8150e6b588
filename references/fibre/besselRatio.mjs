import { all, create } from "mathjs";

// The series cancel about e^(2x): at x = 60 that costs 52 digits, and 120 leave more than enough.
const math = create(all ?? {}, { number: "BigNumber", precision: 120 });

const one = math.bignumber(1);
const nothing = math.bignumber("1e-125");

/**
 * Euler's constant by the Brent–McMillan sums: with t = (n^k / k!)^2, the sum of t H_k over the sum of t, less ln n, is
 * off by about e^(-4n).
 */
function eulerConstant() {
  const n = math.bignumber(80);
  let term = one;
  let harmonic = math.bignumber(0);
  let above = math.bignumber(0);
  let below = one;
  for (let k = 1; k < 600; k++) {
    const ratio = n.div(k);
    term = term.times(ratio).times(ratio);
    harmonic = harmonic.plus(one.div(k));
    above = above.plus(term.times(harmonic));
    below = below.plus(term);
  }
  return above.div(below).minus(n.ln());
}

const euler = eulerConstant();

/**
 * K1(x) / K0(x) from the power series of the modified Bessel functions about 0, which share nothing with the integrals
 * the library uses. The functions are checked against their Wronskian, I0 K1 + I1 K0 = 1/x, before they are divided.
 * Series: NIST Digital Library of Mathematical Functions, 10.25.2, 10.31.1 and 10.31.2 (from memory).
 *
 * @param {string} written x, written out in decimals, up to 60
 * @returns {import("mathjs").BigNumber} the ratio, to 50 digits at least
 */
export function besselRatio(written) {
  const x = math.bignumber(written);
  const half = x.div(2);
  const square = half.times(half);
  const logarithm = half.ln().plus(euler);
  let term = one; // (x^2/4)^k / (k!)^2
  let harmonic = math.bignumber(0);
  let i0 = one;
  let i1 = half;
  let k0 = logarithm.neg();
  let k1 = one.div(x).plus(half.times(logarithm.minus("0.5")));
  for (let k = 1; k < 2000; k++) {
    term = term.times(square).div(k).div(k);
    harmonic = harmonic.plus(one.div(k));
    const odd = half.times(term).div(k + 1); // (x/2)^(2k+1) / (k! (k+1)!)
    const next = harmonic.plus(one.div(k + 1));
    i0 = i0.plus(term);
    i1 = i1.plus(odd);
    k0 = k0.plus(term.times(harmonic.minus(logarithm)));
    k1 = k1.plus(odd.times(logarithm.minus(harmonic.plus(next).div(2))));
    if (term.lessThan(nothing) && k > 4) break;
  }
  const wronskian = i0.times(k1).plus(i1.times(k0)).times(x);
  if (wronskian.minus(one).abs().greaterThan("1e-60")) throw new Error(`series fail at x = ${written}`);
  return k1.div(k0);
}
