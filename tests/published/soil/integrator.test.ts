import { expect, test } from "vitest";
import { type Rates, Step } from "../../../packages/core/src/soil/life/dormandPrince.js";
import { measure, type Row, readTable, report } from "../../support/table.js";

// The integrator that follows elements as they fill, on the orbit that such methods are tried on. A satellite passes earth
// and moon so closely that errors grow a millionfold on the way; what is left of them after one round is measured.

const moon = 0.012277471;

const orbit: Rates = (state, rates) => {
  const [x = 0, y = 0, u = 0, v = 0] = state;
  const earth = 1 - moon;
  const toEarth = Math.hypot(x + moon, y) ** 3;
  const toMoon = Math.hypot(x - earth, y) ** 3;
  rates.set([
    u,
    v,
    x + 2 * v - (earth * (x + moon)) / toEarth - (moon * (x - earth)) / toMoon,
    y - 2 * u - (earth * y) / toEarth - (moon * y) / toMoon,
  ]);
  return Number.isFinite(toEarth) && toEarth > 0 && toMoon > 0;
};

/** The state after a time, with steps as long as an error a step allows. */
function after(start: readonly number[], time: number, allowed: number): Float64Array {
  let state = Float64Array.from(start);
  let slope = new Float64Array(start.length);
  orbit(state, slope);
  let size = 1e-4;
  for (let done = 0; done < time; ) {
    const step = Step.taken(orbit, state, slope, Math.min(size, time - done));
    if (step === null) throw new Error("the orbit has run into earth or moon");
    size = step.size * Math.min(5, Math.max(0.2, 0.9 * (allowed / Math.max(step.error, 1e-20)) ** 0.2));
    if (step.error > allowed) continue;
    done += step.size;
    state = Float64Array.from(step.to);
    slope = Float64Array.from(step.slope);
  }
  return state;
}

test("Step.taken(rates, from, slope, size) brings the Arenstorf orbit back to where it began", () => {
  const table = readTable("soil/arenstorf.csv");
  const end = after([0.994, 0, 0, -2.0015851063790824], 17.065216560157964, 1e-13);
  const names = ["x", "y", "u", "v"];
  const got = (row: Row) => end[names.indexOf(row.text("quantity"))] ?? Number.NaN;
  const error = measure(table.rows, got, "after_one_round", "absolute");
  report("soil/arenstorf", table, error);
  expect(table.rows).toHaveLength(4);
  expect(error.max, error.worst).toBeLessThanOrEqual(3e-9);
});
