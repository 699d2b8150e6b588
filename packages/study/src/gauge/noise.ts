/**
 * How far what is noted at a machine is usually off, each one standard deviation; common practice, no source.
 *
 * A gauge of the trade is read to about half a kilopascal, or a quarter of an inch of mercury with its needle at rest; a load
 * is known to some 5 %, or 15 % where nobody noted it and full load is taken; fuel temperature to 2 K, or 6 K where the
 * file's is taken.
 */
export const usualNoise = {
  gauge: 500,
  demand: { noted: 0.05, taken: 0.15 },
  temperature: { noted: 2, taken: 6 },
} as const;

/** How far the file itself may be off for all readings alike: its demand and resistances by a share, its zero by a pressure. */
export const fileNoise = {
  demand: 0.1,
  /** Pa: a gauge's own zero */
  zero: 500,
  /** of a pump's rise, which its relief valve sets */
  rise: 0.1,
} as const;

/** Weight of the usual noise against the scatter found: as of so many readings. A stated gauge error weighs more. */
export const noiseWeight = { usual: 4, stated: 12 } as const;
