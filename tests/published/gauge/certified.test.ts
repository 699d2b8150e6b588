import { describe, expect, test } from "vitest";
import { fitLeastSquares } from "../../../packages/study/src/gauge/fit/fitLeastSquares.js";
import { measure, type Row, readTable, report } from "../../support/table.js";
import { at, fitOf, type Problem, problems } from "./problems.js";

// NIST's reference problems of regression, from both start points of each.

const certified = readTable("regression/certified.csv");

test("the table of certified values is whole", () => {
  expect(certified.rows).toHaveLength(41);
  expect(new Set(certified.rows.map((row) => row.text("problem")))).toEqual(new Set(Object.keys(problems)));
});

// Six significant figures are asked for; the ceilings are what the path reaches. MGH10, whose starts lie a hundredfold away
// and whose parameters hang together to the eighth figure, is reached less closely.
const CEILING = { parameter: 2e-9, deviation: 2e-7, sum: 2e-10, mgh10: { parameter: 1.3e-8, deviation: 3e-8 } };

const ceilingOf = (name: string) => (name === "mgh10" ? { ...CEILING, ...CEILING.mgh10 } : CEILING);

const starts = ["start_1", "start_2"] as const;
type Start = (typeof starts)[number];

/** How near a problem's certified values a fit from a start comes. */
const missOf = memo((name: string, start: Start) => {
  const rows = certified.rows.filter((row) => row.text("problem") === name);
  const fit = fitOf(
    problems[name] as Problem,
    rows.map((row) => row.number(start)),
  );
  const variance = fit.sum / fit.freedom;
  const place = (row: Row) => Number(row.text("parameter").slice(1)) - 1;
  const found = {
    parameter: (row: Row) => at(fit.parameters, place(row)),
    deviation: (row: Row) => Math.sqrt(variance * at(fit.covariance[place(row)] ?? [], place(row))),
    sum: () => fit.sum,
  };
  return {
    found,
    parameter: measure(rows, found.parameter, "certified"),
    deviation: measure(rows, found.deviation, "deviation"),
    sum: measure(rows, found.sum, "sum"),
  };
});

// The first eight problems report each start, the later ones the worse of both.
const reportsBoth = new Set(["misra1a", "misra1b", "danwood", "boxbod", "mgh09", "mgh17", "thurber", "chwirut2"]);

describe.each(Object.keys(problems))("fitLeastSquares reproduces the certified values of %s", (name) => {
  test.each(starts)("from %s, to 6 figures and more", (start) => {
    const { parameter, deviation, sum } = missOf(name, start);
    if (reportsBoth.has(name)) report(`gauge/${name} ${start}`, certified, parameter);
    const ceiling = ceilingOf(name);
    expect(parameter.max, parameter.worst).toBeLessThan(ceiling.parameter);
    expect(deviation.max, deviation.worst).toBeLessThan(ceiling.deviation);
    expect(sum.max, sum.worst).toBeLessThan(ceiling.sum);
  });
});

const later = Object.keys(problems).filter((name) => !reportsBoth.has(name));

test.each(later)("of %s the worse start is the one reported", (name) => {
  const [first, second] = starts.map((start) => missOf(name, start).parameter);
  if (!first || !second) throw new Error("two starts are certified");
  const worse = first.max > second.max ? first : second;
  report(`gauge/${name}`, certified, worse);
  expect(worse.max, worse.worst).toBeLessThan(ceilingOf(name).parameter);
});

test.each([
  ["deviation", "deviations of parameters", CEILING.deviation],
  ["sum", "sums of squares", CEILING.sum],
] as const)(
  "fitLeastSquares gives the certified %s of every problem, from its second start",
  (column, words, ceiling) => {
    const got = (row: Row) => missOf(row.text("problem"), "start_2").found[column](row);
    const error = measure(certified.rows, got, column);
    report(`gauge/${words}`, certified, error);
    expect(error.max, error.worst).toBeLessThan(ceiling);
  },
);

test("fitLeastSquares gives the certified straight line of norris", () => {
  const [line, data] = [readTable("regression/certified-linear.csv"), readTable("regression/norris.csv")];
  const fit = fitLeastSquares({
    misses: (b) => Float64Array.from(data.rows, (row) => at(b, 0) + at(b, 1) * row.number("x") - row.number("y")),
    starts: [[1, 1]],
  });
  const place = (row: Row) => Number(row.text("parameter").slice(1)) - 1;
  const error = measure(line.rows, (row) => at(fit.parameters, place(row)), "certified");
  report("gauge/norris", line, error);
  expect([line.rows.length, data.rows.length]).toEqual([2, 36]);
  expect(error.max, error.worst).toBeLessThan(5.2e-9);
  expect(fit.sum / (line.rows[0]?.number("sum") ?? 0)).toBeCloseTo(1, 10);
});

/** Each answer worked out once. */
function memo<Found>(work: (name: string, start: Start) => Found): (name: string, start: Start) => Found {
  const kept = new Map<string, Found>();
  return (name, start) => {
    const known = kept.get(`${name} ${start}`);
    if (known !== undefined) return known;
    const found = work(name, start);
    kept.set(`${name} ${start}`, found);
    return found;
  };
}
