import { requireAtLeast, requireMoreThan } from "../../require.js";

/** A filtration run at constant pressure. */
export interface CakeRun {
  /** of the filter, m2 */
  readonly area: number;
  /** Pa */
  readonly drop: number;
  /** of the liquid, Pa s */
  readonly dynamicViscosity: number;
  /** solids per volume of filtrate, kg/m3 */
  readonly solids: number;
  /** filtrate, m3, at times, s, from the start; two or more */
  readonly readings: readonly { readonly time: number; readonly filtrate: number }[];
}

/** The straight line time/filtrate = start + slope * filtrate. */
export interface CakeLine {
  /** s/m6, half of what textbooks call Kp */
  readonly slope: number;
  /** s/m3 */
  readonly start: number;
}

/** What a run tells of cake and medium. */
export interface CakeRunFit extends CakeLine {
  /** of the cake, m/kg */
  readonly specificResistance: number;
  /** of the medium, 1/m */
  readonly mediumResistance: number;
}

/**
 * Cake and medium from a line drawn through a run of filtration at constant pressure.
 *
 * @throws InputError for anything not above 0 (the start may be 0)
 * @see C. J. Geankoplis, Transport Processes and Unit Operations (3rd ed.), section 14.2
 * @example
 * cakeFromLine({ area: 0.0439, drop: 338e3, dynamicViscosity: 8.937e-4, solids: 23.47 }, { slope: 3e6, start: 6400 })
 */
export function cakeFromLine(run: Omit<CakeRun, "readings">, { slope, start }: CakeLine): CakeRunFit {
  requireMoreThan("cakeFromLine", "area", run.area, 0, "m2");
  requireMoreThan("cakeFromLine", "drop", run.drop, 0, "Pa");
  requireMoreThan("cakeFromLine", "dynamicViscosity", run.dynamicViscosity, 0, "Pa s");
  requireMoreThan("cakeFromLine", "solids", run.solids, 0, "kg/m3");
  requireMoreThan("cakeFromLine", "the slope of time over filtrate", slope, 0, "s/m6");
  requireAtLeast("cakeFromLine", "the start of time over filtrate", start, 0, "s/m3");
  const { area, drop, dynamicViscosity, solids } = run;
  return {
    slope,
    start,
    specificResistance: (2 * slope * area * area * drop) / (dynamicViscosity * solids),
    mediumResistance: (start * area * drop) / dynamicViscosity,
  };
}
