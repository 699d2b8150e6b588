import type { CurveColumn } from "@thirstline/study";

/** Values in shown units, and the letter they are drawn with. */
export interface Trace {
  readonly points: readonly (readonly [number, number])[];
  readonly letter: string;
}

/** A column of values, with its band's ends where it has one, read off at every column of the plot. */
export function tracesOf(
  demand: Float64Array,
  { middle, band }: CurveColumn,
  letter: string,
  columns: Float64Array,
  size: { readonly flow: number; readonly own: number },
): Trace[] {
  const trace = (values: Float64Array, drawnWith: string): Trace => ({
    letter: drawnWith,
    points: [...columns].flatMap((x) => {
      const value = readOff(demand, values, x * size.flow);
      return Number.isFinite(value) ? [[x, value / size.own] as const] : [];
    }),
  });
  return [...(band ? [trace(band.low, "·"), trace(band.high, "·")] : []), trace(middle, letter)];
}

/** Straight between the points of a curve. */
function readOff(xs: Float64Array, ys: Float64Array, x: number): number {
  const last = xs.length - 1;
  const place = Math.min(last, (x / (xs[last] as number)) * last);
  const before = Math.floor(place);
  const from = ys[before] as number;
  return place === before ? from : from + (place - before) * ((ys[before + 1] as number) - from);
}
