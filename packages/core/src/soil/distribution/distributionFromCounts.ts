import { InputError } from "../../InputError.js";
import { requireBetween, requireMoreThan } from "../../require.js";
import { type CountsPerMl, codeSizes } from "../cleanliness/CleanlinessCode.js";
import { requireFallingCounts } from "../cleanliness/requireFalling.js";
import { fillBins, type PowerPiece } from "./fillBins.js";
import { massFrom, massOf } from "./massOf.js";
import { type CountedSolids, type Cutoffs, type NoSolids, usualCutoffs } from "./Solids.js";
import { binCount, sizeEdges } from "./sizeEdges.js";

/** Cubic centimetres in a cubic metre: here, and in `countsPerMl`, counts per mL meet SI. */
export const ML_PER_M3 = 1e6;

/** The most solids that may still be a fuel, kg/m3; EN 590 allows 24 mg/kg. Common practice, no source. */
const MOST_SOLIDS = 1;

/**
 * Particles by size from counts at 4, 6 and 14 um(c): straight in log count over log size between them, the outer
 * slopes carried on to the cutoffs. A count says little about mass: most of it is usually extrapolated, and
 * `extrapolated` says how much.
 *
 * The counts themselves come back exactly. Above the largest size the number a size keeps the outer slope and is scaled
 * so that the count at that size holds and nothing lies beyond the cutoff.
 *
 * @param counts particles per mL of each size and up; more than 0; one of the three may be left out
 * @param cutoffs m, see `usualCutoffs`
 * @returns the distribution; or that there is none, with the reason
 * @throws InputError for counts that are not above 0 or rise with size, or for cutoffs inside the counted sizes
 * @example
 * massOf(distributionFromCounts({ at4: 2500, at6: 640, at14: 80 })) // 4.10e-3 kg/m3, of which 48 % above 14 um
 */
export function distributionFromCounts(
  counts: Partial<CountsPerMl>,
  cutoffs: Cutoffs = usualCutoffs,
): CountedSolids | NoSolids {
  const points = pointsOf(counts);
  const [first, second] = points;
  const [last, nextToLast] = [points[points.length - 1], points[points.length - 2]];
  if (!first || !second || !last || !nextToLast) return { known: false, reason: "too few sizes counted" };
  requireCutoffs(cutoffs, first.size, last.size);
  const pieces: PowerPiece[] = points.slice(1).map((point, at) => between(points[at] ?? point, point));
  const rise = slope(first, second);
  const below = { size: cutoffs.from, count: first.count * (first.size / cutoffs.from) ** rise };
  if (cutoffs.from < first.size) pieces.unshift(between(below, first));
  pieces.push({ from: last.size, to: cutoffs.to, steepness: slope(nextToLast, last), count: last.count });
  const filled = fillBins(pieces);
  const mass = massOf(filled);
  if (!(mass <= MOST_SOLIDS)) return { known: false, reason: "more than 1 g/L of solids" };
  const extrapolated = {
    below: (mass - massFrom(filled, first.size)) / mass,
    above: massFrom(filled, last.size) / mass,
  };
  return { known: true, ...filled, extrapolated, fewCounted: false };
}

interface Point {
  /** m */
  readonly size: number;
  /** particles of that size and up, 1/m3 */
  readonly count: number;
}

function pointsOf(counts: Partial<CountsPerMl>): Point[] {
  const known = codeSizes.flatMap((at) => {
    const count = counts[at];
    return count === undefined ? [] : [{ at, size: Number(at.slice(2)) / 1e6, count }];
  });
  for (const { at, count } of known) {
    if (!(count > 0 && count < Infinity)) {
      const right = "more than 0 particles per mL; where none were seen, give one over the volume counted";
      throw new InputError("distributionFromCounts", `counts.${at}`, right, count);
    }
  }
  // A size left out takes the count of a neighbour, which can break no order.
  const at6 = counts.at6 ?? counts.at14 ?? 0;
  requireFallingCounts("distributionFromCounts", { at4: counts.at4 ?? at6, at6, at14: counts.at14 ?? at6 });
  return known.map(({ size, count }) => ({ size, count: count * ML_PER_M3 }));
}

function slope(small: Point, large: Point): number {
  return Math.log(small.count / large.count) / Math.log(large.size / small.size);
}

function between(small: Point, large: Point): PowerPiece {
  const steepness = slope(small, large);
  return { from: small.size, to: large.size, steepness, count: small.count - large.count };
}

function requireCutoffs(cutoffs: Cutoffs, smallest: number, largest: number): void {
  const caller = "distributionFromCounts";
  requireBetween(caller, "cutoffs.from", cutoffs.from, { from: sizeEdges[0] ?? 0, to: smallest }, "m");
  requireMoreThan(caller, "cutoffs.to", cutoffs.to, largest, "m");
  requireBetween(caller, "cutoffs.to", cutoffs.to, { from: largest, to: sizeEdges[binCount] ?? 0 }, "m");
}
