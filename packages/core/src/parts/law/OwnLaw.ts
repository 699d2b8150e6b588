/**
 * How far a bank goes in one update: to its split (`whole`); or by one step, from an even split (`first step`) or from
 * its last one (`next step`), while whoever asks is closing in on one answer anyway.
 */
export type Pace = "whole" | "first step" | "next step";

/**
 * A part, or a whole bank or run, as the solver works it: set `flow`, call `update`, read `drop` and `slope`.
 *
 * Figures pass through fields, not arguments, because a number handed to a function that is not inlined is allocated;
 * this way a sweep allocates nothing. Drops never fall as flow grows.
 */
export interface OwnLaw {
  /** set by the caller, m3/s, of either sign */
  flow: number;
  /** Pa, after `update` */
  drop: number;
  /** derivative of the drop, Pa s/m3, after `update` */
  slope: number;
  /** false while a bank is still closing in on its split after a step */
  settled: boolean;
  /** whether the slope may jump close by, since a branch rests or a line stands on a step: small steps then prove nothing */
  kinked: boolean;
  /** Works out drop and slope at `flow`. */
  update(pace: Pace): void;
}

/** A part with a law of its own. */
export interface PartLaw extends OwnLaw {
  /** largest flow below a step in its drop, m3/s; Infinity where it has none */
  readonly stepAt: number;
}

/** A bank as the run around it sees it. */
export interface BankLaw extends OwnLaw {
  /** whether nothing passes it backwards, in any branch */
  readonly oneWay: boolean;
  /** Sets the resistance over clean of the named filters in its branches. */
  restrict(restrictions: ReadonlyMap<string, number>): void;
}
