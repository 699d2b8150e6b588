import type { GaugeSide, Interval } from "@thirstline/study";

/** One reading of a gauge with what is fitted to all of them. */
export interface CoursePoint {
  /** which reading it is, from 1 */
  readonly row: number;
  /** running time since the run began, s */
  readonly time: number;
  /** Pa: as read, and what is fitted at its own load and temperature */
  readonly read: number;
  readonly expected: number;
  /** the fitted course at full demand, and as far off it as the reading stands off at its own load; null without a course */
  readonly full: number | null;
  /** whether it stands off from the others */
  readonly off: boolean;
}

/** What one gauge shows over the hours, in SI. */
export interface Course {
  readonly side: GaugeSide;
  readonly points: readonly CoursePoint[];
  /** of the same gauge, before the run that counts: Pa as read */
  readonly earlier: readonly { readonly row: number; readonly read: number }[];
  /** of the fuel, K, at which full demand is reckoned: that of the limit's duty point */
  readonly temperature: number;
  /** whether that is where the first limit is met, so that it is told with what is left */
  readonly ofLimit: boolean;
  /** the fitted course at full demand, Pa, with the ends of its band; null where soil does not explain the readings */
  readonly line: {
    readonly time: readonly number[];
    readonly low: readonly number[];
    readonly middle: readonly number[];
    readonly high: readonly number[];
  } | null;
  /** what the gauge may not pass, Pa; null where nothing is stated */
  readonly limit: number | null;
  /** running time since the run began at which a limit is met, s; null where it is not this gauge's, or not told */
  readonly crossing: Interval | null;
  /** running time of the last reading, s */
  readonly now: number;
}
