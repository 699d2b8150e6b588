import { expect } from "vitest";
import { fitLeastSquares } from "../../../packages/study/src/gauge/fit/fitLeastSquares.js";
import { fitSeparable } from "../../../packages/study/src/gauge/fit/fitSeparable.js";
import type { LeastSquaresFit } from "../../../packages/study/src/gauge/fit/LeastSquares.js";
import { readTable } from "../../support/table.js";

// NIST's reference problems of nonlinear regression. Where a model is a sum of columns times parameters, the fitting path
// solves for those parameters outright and takes no start for them.

type Model = (b: readonly number[], x: number) => number;
export const at = (b: readonly number[], place: number) => b[place] as number;

export interface Problem {
  readonly data: string;
  /** how many observations NIST prints */
  readonly rows: number;
  /** the whole model, for problems that are searched in all parameters */
  readonly model?: Model;
  /** columns of the linear parameters (in the order given), at the nonlinear ones */
  readonly columns?: {
    readonly linear: readonly number[];
    readonly of: (others: readonly number[], x: number) => number[];
  };
}

export const problems: Readonly<Record<string, Problem>> = {
  misra1a: { data: "misra1a", rows: 14, columns: { linear: [0], of: (b, x) => [-Math.expm1(-at(b, 0) * x)] } },
  misra1b: { data: "misra1a", rows: 14, columns: { linear: [0], of: (b, x) => [1 - (1 + (at(b, 0) * x) / 2) ** -2] } },
  danwood: { data: "danwood", rows: 6, model: (b, x) => at(b, 0) * x ** at(b, 1) },
  boxbod: { data: "boxbod", rows: 6, columns: { linear: [0], of: (b, x) => [-Math.expm1(-at(b, 0) * x)] } },
  mgh09: {
    data: "mgh09",
    rows: 11,
    model: (b, x) => (at(b, 0) * (x * x + x * at(b, 1))) / (x * x + x * at(b, 2) + at(b, 3)),
  },
  mgh17: {
    data: "mgh17",
    rows: 33,
    columns: { linear: [0, 1, 2], of: (b, x) => [1, Math.exp(-x * at(b, 0)), Math.exp(-x * at(b, 1))] },
  },
  thurber: {
    data: "thurber",
    rows: 37,
    model: (b, x) =>
      (at(b, 0) + at(b, 1) * x + at(b, 2) * x * x + at(b, 3) * x ** 3) /
      (1 + at(b, 4) * x + at(b, 5) * x * x + at(b, 6) * x ** 3),
  },
  chwirut2: { data: "chwirut2", rows: 54, model: (b, x) => Math.exp(-at(b, 0) * x) / (at(b, 1) + at(b, 2) * x) },
  misra1c: {
    data: "misra1a",
    rows: 14,
    columns: { linear: [0], of: (b, x) => [1 - (1 + 2 * at(b, 0) * x) ** -0.5] },
  },
  misra1d: {
    data: "misra1a",
    rows: 14,
    columns: { linear: [0], of: (b, x) => [(at(b, 0) * x) / (1 + at(b, 0) * x)] },
  },
  rat42: {
    data: "rat42",
    rows: 9,
    columns: { linear: [0], of: (b, x) => [1 / (1 + Math.exp(at(b, 0) - at(b, 1) * x))] },
  },
  rat43: {
    data: "rat43",
    rows: 15,
    columns: { linear: [0], of: (b, x) => [(1 + Math.exp(at(b, 0) - at(b, 1) * x)) ** (-1 / at(b, 2))] },
  },
  mgh10: { data: "mgh10", rows: 16, columns: { linear: [0], of: (b, x) => [Math.exp(at(b, 0) / (x + at(b, 1)))] } },
};

/** The best fit of a problem from a start, by the path the library takes. */
export function fitOf({ data, rows, model, columns }: Problem, start: readonly number[]): LeastSquaresFit {
  const table = readTable(`regression/${data}.csv`);
  expect(table.rows).toHaveLength(rows);
  const xs = table.rows.map((row) => row.number("x"));
  const ys = table.rows.map((row) => row.number("y"));
  if (columns) {
    const others = start.filter((_, place) => !columns.linear.includes(place));
    const columnsAt = (b: readonly number[]) => {
      const found = xs.map((x) => columns.of(b, x));
      return columns.linear.map((_, place) => found.map((row) => at(row, place)));
    };
    return fitSeparable({ columns: columnsAt, readings: ys, starts: [others] });
  }
  const whole = model as Model;
  return fitLeastSquares({
    misses: (b) => Float64Array.from(xs, (x, row) => whole(b, x) - at(ys, row)),
    starts: [start],
  });
}
