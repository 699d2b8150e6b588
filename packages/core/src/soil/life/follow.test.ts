import { describe, expect, test } from "vitest";
import { type Rates, Step } from "./dormandPrince.js";
import { type Bounds, follow } from "./follow.js";

/** y' = (1 - y)^2 / 1000 from 0 is y = t / (1000 + t); and z' = y', so that two figures run together. */
const rates: Rates = (state, into) => {
  into.fill((1 - (state[0] as number)) ** 2 / 1000);
  return true;
};
const exact = (time: number) => time / (1000 + time);
const none: Bounds = { holds: () => true, brokenAt: () => () => 1 };
const upTo = (bound: number): Bounds => ({
  holds: (state) => (state[0] as number) <= bound,
  brokenAt: () => (state) => bound - (state[0] as number),
});
const start = () => Float64Array.of(0, 0);

describe("Step.taken(rates, from, slope, size)", () => {
  const errorsOf = (size: number) => {
    const step = Step.taken(rates, start(), Float64Array.of(1e-3, 1e-3), size);
    const at = (time: number) => Math.abs(((time === size ? step?.to : step?.within(time))?.[0] ?? 0) - exact(time));
    return { end: at(size), between: Math.max(...[0.2, 0.4, 0.6, 0.8].map((share) => at(share * size))) };
  };

  test("errs 2^6 times less at its end, and 2^5 times less between, in half the step", () => {
    const [whole, half] = [errorsOf(200), errorsOf(100)];
    expect(Math.log2(whole.end / half.end)).toBeGreaterThan(5.5);
    expect(Math.log2(whole.between / half.between)).toBeGreaterThan(4.5);
  });

  test("is null where a stage makes no sense", () => {
    expect(Step.taken(() => false, start(), start(), 1)).toBeNull();
  });
});

describe("follow(rates, start, time, bounds, first)", () => {
  test("comes within 1e-9 of a known way", () => {
    for (const first of [null, 1, 5000]) {
      expect(follow(rates, start(), 5000, none, first).state[0]).toBeCloseTo(exact(5000), 9);
    }
  });

  test.each([
    [null, 1],
    [1, 1],
    [5000, 1],
    [null, 0.75],
    [5000, 0.75],
  ])("asks for rates fewer than 570 times: first step %s, bound %d", (first, bound) => {
    let asked = 0;
    const counted: Rates = (state, into) => {
      asked++;
      return rates(state, into);
    };
    follow(counted, start(), 5000, upTo(bound), first);
    // Six a step: some ninety steps to 1e-10, and the search for the moment a bound is met.
    expect(asked).toBeLessThanOrEqual(570);
  });

  test("ends at the moment a bound is met, and holds there to 1e-9", () => {
    const { time, state, broken } = follow(rates, start(), 5000, upTo(0.75), null);
    expect([broken, Math.abs(time - 3000) < 1e-4]).toEqual([true, true]);
    expect(state[0]).toBeCloseTo(0.75, 9);
  });

  test("is a straight line where rates are constant, to rounding", () => {
    const even: Rates = (_, into) => {
      into.fill(2e-4);
      return true;
    };
    expect(follow(even, start(), 1000, none, null)).toMatchObject({ time: 1000, broken: false });
    expect(follow(even, start(), 1e4, upTo(0.5), null).time / 2500).toBeCloseTo(1, 8);
  });

  test("stays where nothing moves, whatever the time", () => {
    const still: Rates = (_, into) => {
      into.fill(0);
      return true;
    };
    expect(Array.from(follow(still, Float64Array.of(0.3, 0), 1e12, none, null).state)).toEqual([0.3, 0]);
  });

  test("ends at the edge of what makes sense, and at once where nothing does", () => {
    const edged: Rates = (state, into) => (state[0] as number) < 0.5 && rates(state, into);
    const { time, broken } = follow(edged, start(), 5000, none, null);
    expect(broken).toBe(true);
    expect(Math.abs(time - 1000)).toBeLessThan(1e-3);
    expect(follow(() => false, start(), 5000, none, null)).toMatchObject({ time: 0, broken: true });
  });
});
