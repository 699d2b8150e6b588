import { type CurveAnswer, type CurvePoint, quantity, type UnitSystem, unitOf } from "@thirstline/study";
import type { Paint } from "../io/paint.js";
import { type Drawn, drawnOf } from "./drawnOf.js";
import { HEIGHT, plotTraces } from "./plotTraces.js";
import { ticksOf } from "./ticks.js";
import { type Trace, tracesOf } from "./tracesOf.js";
import { fill, right, WIDTH } from "./wrap.js";

/** What the axes and their labels take beside the plot, in characters. */
const AXES = 12;

const STATES = [
  { state: "atChange", letter: "o", name: "at change" },
  { state: "now", letter: "+", name: "now" },
  { state: "clean", letter: "•", name: "clean elements" },
] as const;

/** The curve at one temperature, drawn in characters, with its legend. */
export function curveChart(
  answer: CurveAnswer,
  point: CurvePoint,
  { units, paint, width }: { readonly units: UnitSystem; readonly paint: Paint; readonly width: number },
): string[] {
  const drawn = drawnOf(answer, point);
  const flow = unitOf("flow", units);
  const own = unitOf(drawn.kind, units);
  const to = (point.demand.at(-1) ?? 0) / flow.size;
  const duty = point.duty.demand / flow.size;
  const columns = Float64Array.from({ length: width - AXES }, (_, at) => (to * at) / (width - AXES - 1));
  const traces = STATES.flatMap(({ state, letter }): Trace[] => {
    const column = point[state] && drawn.columnOf(point[state]);
    return column ? tracesOf(point.demand, column, letter, columns, { flow: flow.size, own: own.size }) : [];
  });
  const limits = drawn.limits.map(({ value }) => value / own.size);
  const rows = ticksOf(...rangeOf(traces, limits, duty), true);
  const [low = 0, high = 1] = [rows[0], rows.at(-1)];
  const marks: Trace[] = [
    ...limits.map((limit) => ({ points: [...columns].map((x) => [x, limit] as const), letter: "┄" })),
    ...(duty > to ? [] : [{ points: heights(low, high).map((y) => [duty, y] as const), letter: "┊" }]),
  ];
  const picture = plotTraces([...marks, ...traces], {
    low,
    high,
    rows,
    columns: ticksOf(0, to, false),
    width: columns.length,
  });
  return [
    paint("strong", `${drawn.title}, ${own.symbol}`),
    ...picture,
    right(`demand, ${flow.symbol}`, width - 4),
    ...legend(point, drawn, units),
  ];
}

/** What of the values is to be seen: a bit over the limits, and always where the engine runs. */
function rangeOf(traces: readonly Trace[], limits: readonly number[], duty: number): [number, number] {
  const values = traces.flatMap(({ points }) => points.map(([, y]) => y));
  const atDuty = traces.flatMap(({ points }) => points.filter(([x]) => x <= duty * 1.1).map(([, y]) => y));
  const top = limits.length === 0 ? Math.max(...values) : Math.max(...limits.map((one) => one * 1.2), ...atDuty);
  const least = Math.min(0, ...values.filter((value) => value > -top));
  return [least, top > least ? top : least + 1];
}

function heights(low: number, high: number): number[] {
  return Array.from({ length: HEIGHT }, (_, at) => low + ((high - low) * at) / (HEIGHT - 1));
}

function legend(point: CurvePoint, { kind, limits }: Drawn, units: UnitSystem): string[] {
  const traces = [...STATES]
    .reverse()
    .flatMap(({ state, letter, name }) => (point[state] ? [`${letter} ${name}`] : []));
  const banded = [point.clean, point.now, point.atChange].some((state) => state?.vacuum.band);
  const items = [
    ...traces,
    ...(banded ? ["· ends of what is known"] : []),
    ...(limits.length === 0
      ? []
      : [`┄ limits: ${limits.map(({ name, value }) => `${name} ${quantity(value, kind, units)}`).join(", ")}`]),
    ...(point.duty.demand > (point.demand.at(-1) ?? 0)
      ? []
      : [`┊ demand ${quantity(point.duty.demand, "flow", units)}`]),
  ];
  return fill(items, WIDTH - 2).map((line) => `  ${line}`);
}
