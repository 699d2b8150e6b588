import { fuelState, line, type ProfileEntry, parallel, series, solve } from "@thirstline/core";
import { all, create, lusolve } from "mathjs";
import { expect, test } from "vitest";
import { givenOf } from "../support/given.js";
import { measure, readTable, report } from "../support/table.js";

// The same answers by other roads: a table made apart, a closed form in 64 digits, a linear network by matrix.

const math = create(all ?? {}, { number: "BigNumber", precision: 64 });

const fuel = fuelState({ density: 830, kinematicViscosity: 3e-6 });

test("solve(line, fuel).flow(drop) finds the Reynolds number of every row of the 17-digit table", () => {
  const table = readTable("colebrook/colebrook-17.csv");
  const [bore, length] = [0.01, 2];
  const velocityPerReynolds = fuel.kinematicViscosity / bore;
  const error = measure(
    table.rows,
    (row) => {
      const velocity = row.number("reynolds") * velocityPerReynolds;
      const drop = (row.number("friction_factor") * length * fuel.density * velocity ** 2) / (2 * bore);
      const pipe = line({ length, bore, roughness: row.number("relative_roughness") * bore });
      const flow = solve(pipe, fuel).flow(drop);
      return flow / ((Math.PI / 4) * bore ** 2) / velocityPerReynolds;
    },
    "reynolds",
  );
  report("colebrook/flow-of-drop", table, error);
  expect(table.rows).toHaveLength(320);
  expect(error.max, error.worst).toBeLessThanOrEqual(2e-15); // `solve` promises 1e-10
});

test("solve(parallel(...lines), fuel).flow(drop) is what Colebrook–White gives in closed form for a known head loss", () => {
  const of = givenOf(readTable("lines/examples-given.csv"), "white-6.17b");
  const water = fuelState({ density: of("density"), kinematicViscosity: of("kinematic viscosity") });
  const shapes = [1, 2, 3].map((n) => ({
    length: of(`length ${n}`),
    bore: of(`bore ${n}`),
    roughness: of(`roughness ${n}`),
  }));
  const drop = of("density") * of("free fall") * of("head loss");
  const solved = solve(parallel(...shapes.map((shape) => line(shape))), water);
  const flow = solved.flow(drop);
  const branches = flowsOf(solved.profile(flow));
  const due = shapes.map((shape) => closedFormFlow(shape, water, drop));
  expect(flow / due.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 13);
  expect(branches).toHaveLength(3);
  branches.forEach((one, at) => {
    expect(one / (due[at] ?? 0)).toBeCloseTo(1, 12);
  });
});

test("solve(circuit, fuel) splits laminar flow over nested banks as a linear network does", () => {
  const shapes = [
    { length: 3, bore: 0.012 },
    { length: 2, bore: 0.008 },
    { length: 5, bore: 0.006 },
    { length: 1, bore: 0.004 },
    { length: 4, bore: 0.007 },
    { length: 6, bore: 0.01 },
  ];
  const [a, b, c, d, e, f] = shapes.map((shape) => line({ ...shape, roughness: 0 })) as [L, L, L, L, L, L];
  const circuit = series(a, parallel(series(b, parallel(c, d)), e), f);
  const flow = 8e-6; // Re 283 in the first line: laminar everywhere
  const solved = solve(circuit, fuel);
  const viscosity = fuel.density * fuel.kinematicViscosity;
  const conductances = shapes.map(({ length, bore }) => (Math.PI * bore ** 4) / (128 * viscosity * length));
  const [ga, gb, gc, gd, ge, gf] = conductances as [number, number, number, number, number, number];
  // Nodes: inlet, after a, after b, after the bank; the outlet is at 0.
  const matrix = [
    [ga, -ga, 0, 0],
    [-ga, ga + gb + ge, -gb, -ge],
    [0, -gb, gb + gc + gd, -gc - gd],
    [0, -ge, -gc - gd, gc + gd + ge + gf],
  ];
  const [p0, p1, p2, p3] = (lusolve(matrix, [flow, 0, 0, 0]) as number[][]).flat() as [number, number, number, number];
  expect(solved.drop(flow) / p0).toBeCloseTo(1, 13);
  expect(solved.flow(p0) / flow).toBeCloseTo(1, 13);
  const due = [ga * (p0 - p1), gb * (p1 - p2), gc * (p2 - p3), gd * (p2 - p3), ge * (p1 - p3), gf * p3];
  const got = flowsOf(solved.profile(flow));
  expect(got).toHaveLength(6);
  got.forEach((one, at) => {
    expect(one / (due[at] ?? 0)).toBeCloseTo(1, 12);
  });
});

type L = ReturnType<typeof line>;

interface Shape {
  length: number;
  bore: number;
  roughness: number;
}

/** Flow in every part, depth first, as the fuel meets them. */
function flowsOf(entries: readonly ProfileEntry[]): number[] {
  return entries.flatMap((entry) => (entry.kind === "part" ? [entry.flow] : entry.branches.flatMap(flowsOf)));
}

/** With the drop known, Re sqrt(f) is known, and Colebrook–White needs no iteration: V = -2 s log10(rough + 2.51 nu/(D s)). */
function closedFormFlow(shape: Shape, water: { density: number; kinematicViscosity: number }, drop: number): number {
  const big = (value: number) => math.bignumber(value);
  const bore = big(shape.bore);
  const speed = big(2).times(bore).times(big(drop)).div(big(shape.length)).div(big(water.density)).sqrt();
  const rough = big(shape.roughness).div(bore).div(big(3.7));
  const smooth = big(2.51).times(big(water.kinematicViscosity)).div(bore).div(speed);
  const velocity = big(-2).times(speed).times(rough.plus(smooth).log(10));
  const pi = big(-1).acos();
  return velocity.times(pi).div(4).times(bore).times(bore).toNumber();
}
