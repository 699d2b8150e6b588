import {
  type CurveAnswer,
  type CurveColumn,
  type CurvePoint,
  type CurveState,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";
import type { ChartData, ChartLine, LineLook, Mark } from "./ChartData.js";
import { upTo } from "./upTo.js";

/** A pinned variant's clean curve, under its name. */
export interface Pinned {
  readonly name: string;
  readonly demand: Float64Array;
  readonly clean: CurveState | null;
}

/** Vacuum at the pump against demand, or with no pump the pressure at the engine. */
export function curveChart(
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
  const { duty } = point;
  const atDuty = { clean: duty.vacuum, now: duty.vacuumNow, "at change": duty.vacuumAtChange, pinned: null };
  const line = (look: LineLook, label: string, state: CurveState | null): ChartLine[] => {
    const column = state && (gravity ? state.feedPressure : state.vacuum);
    if (!column) return [];
    // With no pump a vacuum is the pressure there turned round.
    const own = atDuty[look]?.middle ?? between(point.demand, column.middle, duty.demand) * (gravity ? -1 : 1);
    const there = (gravity ? -own : own) / pressure.size;
    const atRest = Number.isFinite(there) ? there : null;
    const { band } = column;
    const ends = band && { low: shown(band.low), high: shown(band.high) };
    return [{ look, label, named: true, values: shown(column.middle), atRest, band: ends }];
  };
  const lines = [
    ...pinned.flatMap((one) => line("pinned", one.name, resampled(one, point.demand))),
    ...line("at change", "at change", point.atChange),
    ...line("now", "now", point.now),
    ...line("clean", "clean", point.clean),
  ];
  const horizontals = gravity ? leastAtEngine(point, pressure.size) : vacuumLimits(point.vacuumLimits, pressure.size);
  const ceiling = point.ceilings.atChange.flow.middle;
  const last = point.demand.at(-1) ?? 0;
  const there = gravity ? duty.feedPressure : (duty.vacuumNow ?? duty.vacuum);
  const values = lines.flatMap((one) => one.values).filter((one) => one !== null);
  return {
    title: gravity ? "Pressure at the engine" : "Vacuum at the pump",
    file: "curve",
    x: {
      label: "Demand",
      symbol: flow.symbol,
      values: Array.from(point.demand, (one) => one / flow.size),
      from: 0,
      to: last / flow.size,
    },
    y: {
      label: gravity ? "Pressure at the engine" : "Vacuum at the pump",
      symbol: pressure.symbol,
      ...upTo(
        values,
        horizontals.map(({ value }) => value),
        !gravity,
      ),
    },
    lines,
    horizontals,
    uprights: ceiling > 0 && ceiling <= last ? [{ look: "ceiling", label: "ceiling", value: ceiling / flow.size }] : [],
    stretch: null,
    dot:
      there && Number.isFinite(there.middle) ? { x: duty.demand / flow.size, y: there.middle / pressure.size } : null,
  };
}

function leastAtEngine({ feedLimit }: CurvePoint, size: number): Mark[] {
  return [{ look: "limit", label: "least at the engine", value: feedLimit / size }];
}

/** The two limits of vacuum that are stated, in the unit shown. */
export function vacuumLimits({ clean, atChange }: CurvePoint["vacuumLimits"], size: number): Mark[] {
  return [
    ...(clean === null ? [] : [{ look: "clean limit", label: "clean limit", value: clean / size } as const]),
    ...(atChange === null ? [] : [{ look: "limit", label: "limit at change", value: atChange / size } as const]),
  ];
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
