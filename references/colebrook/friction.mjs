import { all, create } from "mathjs";

// 64 significant digits: four times what a double holds, so rounding here never reaches the 17 digits kept.
const math = create(all ?? {}, { number: "BigNumber", precision: 64 });

const two = math.bignumber(2);
const tiny = math.bignumber("1e-58");
const perUnit = math.bignumber("3.7");
const smoothWall = math.bignumber("2.51");

/**
 * Darcy friction factor of the Colebrook–White equation by plain high-precision arithmetic, sharing nothing with the
 * library: Newton's method on x = 1/sqrt(f), held inside a bracket and halved whenever a step leaves it.
 *
 * @param {string} reynolds Reynolds number, written out in decimals
 * @param {string} relativeRoughness roughness over bore, written out in decimals
 * @returns {import("mathjs").BigNumber} friction factor, to some 57 digits
 */
export function friction(reynolds, relativeRoughness) {
  const rough = math.bignumber(relativeRoughness).div(perUnit);
  const smooth = smoothWall.div(math.bignumber(reynolds));
  // x + 2 log10(rough + smooth x) rises with x; below 1 it is negative and above 20 positive in all of 4e3..1e8, 0..0.05.
  let low = math.bignumber(1);
  let high = math.bignumber(20);
  let x = math.bignumber(7);
  for (let step = 0; step < 300; step++) {
    const inside = rough.plus(smooth.times(x));
    const miss = x.plus(two.times(inside.log(10)));
    if (miss.isNegative()) low = x;
    else high = x;
    const slope = two
      .times(smooth)
      .div(inside.times(math.bignumber(10).ln()))
      .plus(1);
    let next = x.minus(miss.div(slope));
    if (next.lessThan(low) || next.greaterThan(high)) next = low.plus(high).div(two);
    const moved = next.minus(x).abs();
    x = next;
    if (moved.lessThan(tiny)) return math.bignumber(1).div(x.times(x));
  }
  throw new Error(`no root for Re ${reynolds}, relative roughness ${relativeRoughness}`);
}
