import {
  type CurveAnswer,
  type CurveColumn,
  type CurvePoint,
  type CurveState,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";

/** A line of the chart, in the units shown; gaps are null. */
export interface ChartLine {
  readonly name: "clean" | "now" | "at change" | "pinned";
  /** said at the line's end */
  readonly label: string;
  readonly values: readonly (number | null)[];
  /** at the demand of the engine; null where it is not known */
  readonly atDuty: number | null;
  readonly band: { readonly low: readonly (number | null)[]; readonly high: readonly (number | null)[] } | null;
}

/** Everything the chart draws, in the units shown. */
export interface ChartData {
  readonly demand: readonly number[];
  readonly lines: readonly ChartLine[];
  /** horizontals */
  readonly limits: readonly { readonly label: string; readonly value: number; readonly dashed: boolean }[];
  /** the ceiling; null where none is in the picture */
  readonly ceiling: { readonly label: string; readonly value: number } | null;
  readonly duty: { readonly demand: number; readonly value: number } | null;
  readonly xSymbol: string;
  readonly ySymbol: string;
  /** whether limits are the most allowed; with no pump they are the least */
  readonly limitsAreMost: boolean;
  /** what the upright axis shows */
  readonly title: string;
}

/** A curve as the chart takes it: vacuum at the pump, or with no pump the pressure at the engine. */
export function columnsOf(
  answer: CurveAnswer,
  point: CurvePoint,
  pinned: readonly Pinned[],
  units: UnitSystem,
): ChartData {
  const gravity = answer.pump === "none";
  const flow = unitOf("flow", units);
  const pressure = unitOf(gravity ? "pressure" : "vacuum", units);
  const shown = (column: Float64Array) =>
    Array.from(column, (one) => (Number.isFinite(one) ? one / pressure.size : null));
  const line = (name: ChartLine["name"], label: string, state: CurveState | null): ChartLine[] => {
    const column = state && (gravity ? state.feedPressure : state.vacuum);
    if (!column) return [];
    const there = between(point.demand, column.middle, point.duty.demand) / pressure.size;
    const atDuty = Number.isFinite(there) ? there : null;
    return [{ name, label, values: shown(column.middle), atDuty, band: bandOf(column, shown) }];
  };
  const { clean, atChange } = point.vacuumLimits;
  const limit = (value: number | null, label: string, dashed: boolean) =>
    value === null ? [] : [{ label, value: value / pressure.size, dashed }];
  const ceiling = point.ceilings.atChange.flow.middle;
  const last = point.demand.at(-1) ?? 0;
  const duty = gravity ? point.duty.feedPressure : (point.duty.vacuumNow ?? point.duty.vacuum);
  return {
    demand: Array.from(point.demand, (one) => one / flow.size),
    lines: [
      ...pinned.flatMap((one) => line("pinned", one.name, resampled(one, point.demand))),
      ...line("at change", "at change", point.atChange),
      ...line("now", "now", point.now),
      ...line("clean", "clean", point.clean),
    ],
    limits: gravity
      ? limit(point.feedLimit, "least at the engine", false)
      : [...limit(clean, "clean limit", true), ...limit(atChange, "limit at change", false)],
    ceiling: ceiling > 0 && ceiling <= last ? { label: "ceiling", value: ceiling / flow.size } : null,
    duty:
      duty && Number.isFinite(duty.middle)
        ? { demand: point.duty.demand / flow.size, value: duty.middle / pressure.size }
        : null,
    limitsAreMost: !gravity,
    xSymbol: flow.symbol,
    ySymbol: pressure.symbol,
    title: gravity ? "Pressure at the engine" : "Vacuum at the pump",
  };
}

/** A pinned variant's clean curve, under its name. */
export interface Pinned {
  readonly name: string;
  readonly demand: Float64Array;
  readonly clean: CurveState | null;
}

function bandOf({ band }: CurveColumn, shown: (column: Float64Array) => (number | null)[]): ChartLine["band"] {
  return band && { low: shown(band.low), high: shown(band.high) };
}

/** The pinned curve at the demands of this one: straight between its points, a gap beyond its end. */
function resampled({ demand, clean }: Pinned, at: Float64Array): CurveState | null {
  if (clean === null) return null;
  const along = (column: CurveColumn): CurveColumn => ({
    middle: at.map((one) => between(demand, column.middle, one)),
    band: null,
  });
  return { vacuum: along(clean.vacuum), feedPressure: clean.feedPressure && along(clean.feedPressure) };
}

function between(xs: Float64Array, ys: Float64Array, x: number): number {
  const after = xs.findIndex((one) => one >= x);
  if (after === -1) return Number.NaN;
  const [x1 = 0, y1 = Number.NaN] = [xs[after], ys[after]];
  if (after === 0) return y1;
  const [x0 = 0, y0 = Number.NaN] = [xs[after - 1], ys[after - 1]];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
