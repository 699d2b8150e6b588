import {
  type CodeSize,
  codeOf,
  countsOf,
  distributionFromCode,
  distributionFromMass,
  massOf,
  type ParticleDistribution,
  parseCode,
  sizeEdges,
  type TestDust,
  tankBalance,
} from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../../support/table.js";

// The library's dust against other editions, other methods and what was found in fuel. Ceilings sit just above today's error.
const CEILING = {
  "dust-limits": { rows: 24, percent: 0 },
  // At 5.5 um: the later sizing method finds more fine dust in the same grade.
  "dust-2016": { rows: 8, percent: 3.5 },
  // Below 5 um, of the fine dust: 39 % by roller analyser, 33.5 % by the later limits.
  "roller-analyser": { rows: 8, percent: 5.6 },
  // Less than was weighed: 4.9 and 2.0 mg/L of 9.2, which also holds what no counter sees.
  "dispenser-mass": { rows: 2, relative: 0.79 },
  "terminal-solids": { rows: 1, halfSteps: 1 },
  "code-example": { rows: 3, relative: 0 },
  washout: { rows: 7, halfSteps: 1 },
};

const none = { suction: new Float64Array(sizeEdges.length - 1), delivery: new Float64Array(sizeEdges.length - 1) };

/** Share of a dust's mass below a size, um, in per cent; a bin that the size cuts is shared out over log size. */
function percentBelow({ masses }: ParticleDistribution, micrometres: number): number {
  const size = micrometres / 1e6;
  let below = 0;
  let all = 0;
  masses.forEach((mass, bin) => {
    const [from, to] = [sizeEdges[bin] ?? 0, sizeEdges[bin + 1] ?? 0];
    all += mass;
    below += mass * Math.min(1, Math.max(0, Math.log(size / from) / Math.log(to / from)));
  });
  return (100 * below) / all;
}

const dustOf = (name: string) => distributionFromMass({ mass: 1e-3, dust: name as TestDust });

/** A share held to a range: the range's nearest point, from which its distance is its error. */
const held = (value: number, row: Row, least: string, most: string) =>
  Math.min(Math.max(value, row.number(least)), row.number(most));

test("distributionFromMass({ dust }) lies within the limits of every grade at every size, 1997", () => {
  const table = readTable("soil/dust-limits.csv");
  // A tenth of a millionth of a per cent is the rounding of hundreds of bins.
  const got = (row: Row) => Number(percentBelow(dustOf(row.text("dust")), row.number("size_um")).toFixed(7));
  const error = measure(table.rows, got, (row) => held(got(row), row, "least_percent", "most_percent"), "absolute");
  report("soil/dust-limits", table, error);
  expect(table.rows).toHaveLength(CEILING["dust-limits"].rows);
  expect(error.max, error.worst).toBe(CEILING["dust-limits"].percent);
});

test("distributionFromMass({ dust: A2 fine }) against the limits of the 2016 edition", () => {
  const table = readTable("soil/dust-2016.csv");
  const got = (row: Row) => percentBelow(dustOf("A2 fine"), row.number("size_um"));
  const error = measure(table.rows, got, (row) => held(got(row), row, "least_percent", "most_percent"), "absolute");
  report("soil/dust-2016", table, error);
  expect(table.rows).toHaveLength(CEILING["dust-2016"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["dust-2016"].percent);
});

test("distributionFromMass({ dust }) against the air-cleaner dusts before it", () => {
  const table = readTable("soil/roller-analyser.csv");
  const got = (row: Row) => {
    const dust = dustOf(row.text("dust"));
    const from = row.number("from_um");
    return percentBelow(dust, row.number("to_um")) - (from === 0 ? 0 : percentBelow(dust, from));
  };
  const error = measure(table.rows, got, "percent", "absolute");
  report("soil/roller-analyser", table, error);
  expect(table.rows).toHaveLength(CEILING["roller-analyser"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["roller-analyser"].percent);
});

test("distributionFromCode(code) weighs what the fuel of dispensers weighed, to an order of magnitude", () => {
  const table = readTable("soil/dispenser-mass.csv");
  const got = (row: Row) => {
    const solids = distributionFromCode(parseCode(row.text("code")), "middle");
    return solids.known ? massOf(solids) * 1e3 : Number.NaN;
  };
  const error = measure(table.rows, got, "mass_mg_l");
  report("soil/dispenser-mass", table, error);
  expect(table.rows).toHaveLength(CEILING["dispenser-mass"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["dispenser-mass"].relative);
});

test("tankBalance(given).movedBy(time).delivered is the year's solids of a terminal tank", () => {
  const table = readTable("soil/terminal-solids.csv");
  const barrel = 42 * 231 * 0.0254 ** 3;
  const week = 7 * 86400;
  const got = (row: Row) => {
    const delivered = distributionFromMass({ mass: row.number("solids_mg_l") / 1e3 });
    const burn = (row.number("barrels_a_week") * barrel) / week;
    const tank = tankBalance({ volume: 1e4, burn, delivered, start: delivered, ...none });
    return tank.movedBy(row.number("weeks") * week).delivered / 0.45359237;
  };
  const error = measure(table.rows, got, "solids_lb", "half steps");
  report("soil/terminal-solids", table, error);
  expect(table.rows).toHaveLength(CEILING["terminal-solids"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["terminal-solids"].halfSteps);
});

test("tankBalance(given).tankAt(time) washes out as a stirred tank does", () => {
  const table = readTable("soil/washout.csv");
  const dirty = distributionFromMass({ mass: 1 });
  const clean = distributionFromMass({ mass: 0 });
  const got = (row: Row) => {
    const tank = tankBalance({ volume: 2, burn: 1e-3, delivered: clean, start: dirty, ...none });
    return massOf(tank.tankAt(row.number("turnovers") * 2000)) / massOf(dirty);
  };
  const error = measure(table.rows, got, "left", "half steps");
  report("soil/washout", table, error);
  expect(table.rows).toHaveLength(CEILING.washout.rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING.washout.halfSteps);
});

test("countsOf(code) gives the intervals the standard spells out for 22/18/13", () => {
  const table = readTable("soil/code-example.csv");
  const range = (row: Row) => countsOf(parseCode(row.text("code")))[`at${row.text("size_um")}` as CodeSize];
  const upTo = measure(table.rows, (row) => range(row).upTo ?? Number.NaN, "up_to_per_ml");
  const moreThan = measure(table.rows, (row) => range(row).moreThan, "more_than_per_ml");
  report("soil/code-example", table, upTo);
  expect(table.rows).toHaveLength(CEILING["code-example"].rows);
  expect(Math.max(upTo.max, moreThan.max), upTo.worst).toBe(CEILING["code-example"].relative);
  expect(codeOf({ at4: 40000, at6: 2500, at14: 80 }).at4.scale).toBe(22);
});
