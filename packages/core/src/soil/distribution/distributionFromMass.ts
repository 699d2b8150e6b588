import { InputError } from "../../InputError.js";
import { requireAtLeast } from "../../require.js";
import { fillBins, type PowerPiece, SPHERE } from "./fillBins.js";
import type { ParticleDistribution } from "./ParticleDistribution.js";
import { powerIntegral } from "./powerIntegral.js";
import { dustSizes, type TestDust, testDusts } from "./testDusts.js";

/**
 * Particles of a given mass of test dust. 1 mg/L of medium dust holds about 80 particles of 10 um and up per mL.
 *
 * Volume straight over log size between the stated sizes; beyond them the outer slope until nothing or all is reached.
 * Spheres: counts of the real, angular dust may differ by a factor of 2 (older liquid practice counts twice as many).
 *
 * @param given mass per volume of fuel, kg/m3; grade of dust, medium when left out
 * @throws InputError for a mass below 0, or a grade that is not among `testDusts`
 * @see ISO 12103-1:1997, limits of the grades (from memory)
 * @example
 * countsPerMl(distributionFromMass({ mass: 1e-3 })).at14 // 28.18
 */
export function distributionFromMass(given: { readonly mass: number; readonly dust?: TestDust }): ParticleDistribution {
  const { mass, dust = "A3 medium" } = given;
  requireAtLeast("distributionFromMass", "mass", mass, 0, "kg/m3");
  if (!Object.hasOwn(testDusts, dust)) {
    throw new InputError("distributionFromMass", "dust", Object.keys(testDusts).join(" or "), dust);
  }
  return fillBins(dustPieces(dust).map((piece) => ({ ...piece, count: piece.count * mass })));
}

/** A test dust as pieces with the same volume in every equal step of log size; counts are those of 1 kg/m3. */
export function dustPieces(dust: TestDust): PowerPiece[] {
  const points = outerPoints(dustSizes.map((size, at) => ({ size, below: testDusts[dust][at] ?? 0 })));
  return points.slice(1).map((point, at) => {
    const before = points[at] ?? point;
    const from = before.size / 1e6;
    const to = point.size / 1e6;
    const mass = (point.below - before.below) / 100;
    const massPerCount = (SPHERE * from ** 3 * powerIntegral(1, to / from, 0)) / powerIntegral(1, to / from, -3);
    return { from, to, steepness: 3, count: mass / massPerCount };
  });
}

interface DustPoint {
  /** um */
  readonly size: number;
  /** volume of smaller particles, % */
  readonly below: number;
}

/** Carries the outer slopes on to 0 and 100 %. */
function outerPoints(points: readonly DustPoint[]): DustPoint[] {
  const [first, second] = points;
  const [last, nextToLast] = [points[points.length - 1], points[points.length - 2]];
  if (!first || !second || !last || !nextToLast) return [...points];
  const start = { size: whereReaches(0, first, second), below: 0 };
  const end = { size: whereReaches(100, last, nextToLast), below: 100 };
  return last.below < 100 ? [start, ...points, end] : [start, ...points];
}

/** The size at which a line in log size through two points reaches a share. */
function whereReaches(below: number, near: DustPoint, far: DustPoint): number {
  return near.size * (near.size / far.size) ** ((below - near.below) / (near.below - far.below));
}
