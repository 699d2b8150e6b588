// npm run bench: what the solver costs, as ratios within one run to a plain solver of the same circuit and to a numeric
// library's root finder doing the plain solver's searches. Absolute times are this machine's; ratios travel.

import { solve, sweep } from "@thirstline/core";
import newtonRaphson from "newton-raphson-method";
import { Bench } from "tinybench";
import { circuit, flow, fuel, shape } from "./circuit.mjs";
import { plainDrop, plainFlow } from "./plain.mjs";

/**
 * The library's finder differences the function itself; it is asked in units of the upper end, half-way as a start.
 * @type {import("./plain.mjs").Root}
 */
function libraryRoot(f, low, high) {
  const found = newtonRaphson((share) => f(share * high), 0.5, { tolerance: 1e-9, maxIterations: 60 });
  if (found === false) throw new Error(`the library found no root between ${low} and ${high}`);
  return found * high;
}

const solved = solve(circuit, fuel);
const drop = solved.drop(flow);
const flows = Float64Array.from({ length: 1000 }, (_, at) => (flow * 2 * (at + 1)) / 1000);
const into = new Float64Array(flows.length);

// Flow and drop move a little from call to call, so that nothing can be remembered.
let turn = 0;
const near = () => 1 + (turn++ % 64) * 1e-3;
let sink = 0;

/** @type {Record<string, { ours: () => number | undefined, plain: (() => number) | null }>} */
const cases = {
  "one drop": { ours: () => solved.drop(flow * near()), plain: () => plainDrop(shape, fuel, flow * near()) },
  "its inverse": { ours: () => solved.flow(drop * near()), plain: () => plainFlow(shape, fuel, drop * near()) },
  "sweep of 1000": { ours: () => sweep(solved, flows, into)[999], plain: null },
};
/** @type {Record<string, () => number>} */
const library = {
  "one drop": () => plainDrop(shape, fuel, flow * near(), libraryRoot),
  "its inverse": () => plainFlow(shape, fuel, drop * near(), libraryRoot),
};

/**
 * Median time of one call, microseconds; quick calls are timed many at a time.
 * @param {() => number | undefined} call
 */
async function time(call) {
  const begin = performance.now();
  sink += call() ?? 0;
  const many = Math.max(1, Math.round(0.2 / Math.max(performance.now() - begin, 1e-3)));
  const bench = new Bench({ time: 400, warmupTime: 150 });
  bench.add("call", () => {
    for (let at = 0; at < many; at++) sink += call() ?? 0;
  });
  await bench.run();
  const { result } = bench.tasks[0] ?? {};
  if (!result || !("latency" in result)) throw new Error("a case could not be timed");
  return (result.latency.p50 * 1000) / many;
}

const close = Math.abs(plainDrop(shape, fuel, flow) / drop - 1);
if (!(close < 1e-9)) throw new Error(`the two solvers disagree by ${close}`);

const rows = [];
for (const [name, { ours, plain }] of Object.entries(cases)) {
  const own = await time(ours);
  const straight = plain ? await time(plain) : null;
  const finding = library[name];
  const finder = finding ? await time(finding) : null;
  rows.push({ name, own, straight, finder });
}
const oneDrop = rows[0]?.own ?? Number.NaN;

/** @type {(value: string, width: number) => string} */
const cell = (value, width) => value.padStart(width);
/** @type {(value: number | null, own: number) => string} */
const times = (value, own) => (value === null ? "" : `${(value / own).toFixed(0)}x`);
console.log(`node ${process.version}; the two solvers agree to ${close.toExponential(1)}`);
console.log(`${"".padEnd(16)}${cell("time, us", 10)}${cell("in drops", 10)}${cell("plain", 10)}${cell("library", 10)}`);
for (const { name, own, straight, finder } of rows) {
  const inDrops = (own / oneDrop).toFixed(2);
  const line = [own.toFixed(own < 10 ? 2 : 0), inDrops, times(straight, own), times(finder, own)];
  console.log(name.padEnd(16) + line.map((value) => cell(value, 10)).join(""));
}

// No allocation in a sweep: the heap must not grow by as much as one number a point.
if (globalThis.gc) {
  globalThis.gc();
  const before = process.memoryUsage().heapUsed;
  for (let at = 0; at < 100; at++) sweep(solved, flows, into);
  const grown = process.memoryUsage().heapUsed - before;
  console.log(`heap after 100 sweeps: ${grown < 0 ? 0 : (grown / 1e5).toFixed(2)} bytes a point`);
}
if (!Number.isFinite(sink)) throw new Error("a figure was not finite");
