import fc from "fast-check";
import { expect, test } from "vitest";
import { ticksOf } from "./ticks.js";

test("ticksOf(from, to, outward) steps by 1, 2 or 5", () => {
  expect(ticksOf(0, 575, false)).toEqual([0, 100, 200, 300, 400, 500]);
  expect(ticksOf(0, 48, true)).toEqual([0, 10, 20, 30, 40, 50]);
  expect(ticksOf(-0.5, 1.1, true)).toEqual([-0.5, 0, 0.5, 1, 1.5]);
});

test("ticksOf(from, to, outward) always covers its range in a handful of ticks", () => {
  const ends = fc.tuple(
    fc.double({ min: -1e6, max: 1e6, noNaN: true }),
    fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
  );
  fc.assert(
    fc.property(ends, ([from, length]) => {
      fc.pre(Math.abs(from) < 1e3 * length); // a range far from zero and tiny is not drawn
      const ticks = ticksOf(from, from + length, true);
      expect(ticks[0]).toBeLessThanOrEqual(from + 1e-6 * length);
      expect(ticks.at(-1)).toBeGreaterThanOrEqual(from + length - 1e-6 * length);
      expect(ticks.length).toBeLessThanOrEqual(9);
    }),
  );
});
