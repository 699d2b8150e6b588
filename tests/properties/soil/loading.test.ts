import {
  absorberLaw,
  assumedLoading,
  type CombinedLawName,
  capacityPoint,
  filter,
  filtrateAt,
  fitLoadingLaw,
  fuelState,
  type LoadingLaw,
  type LoadingLawName,
  lawConstants,
  loadAtRatio,
  loadingLaw,
  plugsAt,
  rescaleLaw,
  resistanceRatio,
  resistanceSlope,
  type SingleLawName,
  solve,
  timeToFilter,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { filtrateByIntegration, ratioByIntegration } from "../../published/soil/loadingByIntegration.js";
import { between, lawNames, logBetween, someLaw } from "./some.js";

const pairs = lawNames.filter((name) => lawConstants[name].length === 2) as CombinedLawName[];
const singles = lawNames.filter((name) => lawConstants[name].length === 1) as SingleLawName[];

/** The load at a share of the way to where the law plugs, or to a hundredfold restriction where it never does. */
const someWay = (law: LoadingLaw, share: number) => share * Math.min(plugsAt(law), loadAtRatio(law, 100));

test("resistanceRatio(law, load) is 1 clean and never falls as soil comes", () => {
  fc.assert(
    fc.property(someLaw, between(0, 5), between(0, 5), (law, one, other) => {
      expect(resistanceRatio(law, 0)).toBe(1);
      const [less, more] = [Math.min(one, other), Math.max(one, other)];
      const [before, after] = [resistanceRatio(law, less), resistanceRatio(law, more)];
      expect(before).toBeGreaterThanOrEqual(1);
      if (after !== Infinity) expect(after / before).toBeGreaterThan(1 - 1e-13);
      else expect(more).toBeGreaterThanOrEqual(plugsAt(law));
    }),
  );
});

test("loadAtRatio(law, ratio) is where resistanceRatio(law, load) is the ratio", () => {
  fc.assert(
    fc.property(someLaw, logBetween(1, 1e4), (law, ratio) => {
      expect(resistanceRatio(law, loadAtRatio(law, ratio)) / ratio).toBeCloseTo(1, 9);
      expect(loadAtRatio(law, 1)).toBe(0);
    }),
  );
});

test("resistanceSlope(law, load) is the derivative of resistanceRatio(law, load)", () => {
  fc.assert(
    fc.property(someLaw, between(0.05, 0.9), (law, share) => {
      const load = someWay(law, share);
      const step = load * 1e-5;
      const chord = (resistanceRatio(law, load + step) - resistanceRatio(law, load - step)) / (2 * step);
      expect(resistanceSlope(law, load) / chord).toBeCloseTo(1, 5);
    }),
  );
});

test("resistanceRatio(law, load) agrees with its mechanism integrated step by step, for random constants", () => {
  fc.assert(
    fc.property(someLaw, between(0.01, 0.9), (law, share) => {
      const load = someWay(law, share);
      expect(resistanceRatio(law, load) / ratioByIntegration(law, load)).toBeCloseTo(1, 9);
    }),
    { numRuns: 60 },
  );
});

test("filtrateAt(law, given) agrees with its mechanism integrated step by step, for random constants", () => {
  fc.assert(
    fc.property(someLaw, logBetween(0.01, 2), (law, time) => {
      const filtrate = filtrateAt(law, { initialVelocity: 1, time });
      expect(filtrate / filtrateByIntegration(law, 1, time)).toBeCloseTo(1, 9);
    }),
    { numRuns: 60 },
  );
});

test("timeToFilter(law, given) and filtrateAt(law, given) are inverse", () => {
  fc.assert(
    fc.property(someLaw, logBetween(1e-5, 1e-2), between(0.01, 0.9), (law, initialVelocity, share) => {
      const filtrate = someWay(law, share);
      const time = timeToFilter(law, { initialVelocity, filtrate });
      expect(filtrateAt(law, { initialVelocity, time }) / filtrate).toBeCloseTo(1, 10);
    }),
  );
});

test("resistanceRatio(law, load) is Infinity from plugsAt(law) on, never NaN, and finite just before", () => {
  fc.assert(
    fc.property(someLaw, between(1, 1e6), (law, times) => {
      const end = plugsAt(law);
      if (end === Infinity) {
        expect(resistanceRatio(law, times)).toBeGreaterThanOrEqual(1); // NaN fails, overflow to Infinity may be
        return;
      }
      expect(resistanceRatio(law, end)).toBe(Infinity);
      expect(resistanceSlope(law, end)).toBe(Infinity);
      expect(timeToFilter(law, { initialVelocity: 1, filtrate: end })).toBe(Infinity);
      expect(resistanceRatio(law, end * times)).toBe(Infinity);
      expect(resistanceRatio(law, end * (1 - 1e-9))).toBeLessThan(Infinity);
    }),
  );
});

test("plugsAt(law) is finite exactly where pores close one by one or narrow", () => {
  const ends = lawNames.filter((name) => {
    const constants = Object.fromEntries(lawConstants[name].map((one) => [one, 1]));
    return plugsAt(loadingLaw(name, constants)) < Infinity;
  });
  expect(ends.sort()).toEqual(lawNames.filter((name) => /complete|standard/.test(name)).sort());
});

test.each(pairs)(
  "a %s law with one constant 0 is the other law, and close to it with a constant close to 0",
  (name) => {
    const [first, second] = lawConstants[name] as readonly [SingleLawName, SingleLawName];
    fc.assert(
      fc.property(logBetween(0.1, 2), between(0, 0.9), fc.boolean(), (constant, share, keepFirst) => {
        const [kept, dropped] = keepFirst ? [first, second] : [second, first];
        const single = loadingLaw(kept, { [kept]: constant });
        const pair = (small: number) =>
          loadingLaw(name, { [kept]: constant, [dropped]: small } as Record<SingleLawName, number>);
        const load = someWay(single, share);
        const ratio = resistanceRatio(single, load);
        const run = { initialVelocity: 1, time: load };
        expect(plugsAt(pair(0))).toBe(plugsAt(single));
        expect(resistanceRatio(pair(0), load) / ratio).toBeCloseTo(1, 14);
        expect(loadAtRatio(pair(0), 7) / loadAtRatio(single, 7)).toBeCloseTo(1, 12);
        for (const small of [1e-9, 1e-12, 1e-200, 5e-324]) {
          const digits = small < 1e-11 ? 8 : 5;
          expect(resistanceRatio(pair(small), load) / ratio).toBeCloseTo(1, digits);
          expect(resistanceSlope(pair(small), load)).toBeCloseTo(resistanceSlope(single, load), 4);
          if (load > 0) expect(filtrateAt(pair(small), run) / filtrateAt(single, run)).toBeCloseTo(1, digits);
        }
      }),
    );
  },
);

test.each(lawNames)("a %s law without any constant is a medium that stays clean", (name) => {
  const law = loadingLaw(name, Object.fromEntries(lawConstants[name].map((one) => [one, 0])));
  for (const load of [0, 1, 1e300]) expect(resistanceRatio(law, load)).toBe(1);
  expect(resistanceSlope(law, 1)).toBe(0);
  expect(plugsAt(law)).toBe(Infinity);
  expect(loadAtRatio(law, 2)).toBe(Infinity);
  expect(filtrateAt(law, { initialVelocity: 2, time: 3 })).toBe(6);
  expect(timeToFilter(law, { initialVelocity: 2, filtrate: 6 })).toBe(3);
});

test.each(singles)("fitLoadingLaw(%s, one point) passes the point", (name) => {
  fc.assert(
    fc.property(logBetween(1e-3, 10), logBetween(1.001, 1e4), (load, ratio) => {
      const fit = fitLoadingLaw(name, [{ load, ratio }]);
      if (!fit.known) throw new Error(fit.reason);
      expect(resistanceRatio(fit.law, load) / ratio).toBeCloseTo(1, 9);
    }),
  );
});

test("fitLoadingLaw(pair, two points) passes both points of any law of that pair", () => {
  fc.assert(
    fc.property(someLaw, logBetween(1.05, 5), logBetween(1.1, 10), (law, ratio, times) => {
      fc.pre(lawConstants[law.name].length === 2);
      const points = [ratio, ratio * times].map((one) => ({ load: loadAtRatio(law, one), ratio: one }));
      const fit = fitLoadingLaw(law.name, points);
      if (!fit.known) throw new Error(`${JSON.stringify(law)} ${JSON.stringify(points)}: ${fit.reason}`);
      for (const point of points) expect(resistanceRatio(fit.law, point.load) / point.ratio).toBeCloseTo(1, 7);
    }),
  );
});

test("fitLoadingLaw(cake-intermediate, points) of a pair with both constants equal takes the one with more cake", () => {
  // Then the pair is a plain exponential of twice the constant, so intermediate blocking alone passes the points as
  // well.
  const law = loadingLaw("cake-intermediate", { cake: 1, intermediate: 1 });
  const points = [0.3, 0.9].map((load) => ({ load, ratio: Math.exp(2 * load) }));
  for (const { load, ratio } of points) expect(resistanceRatio(law, load) / ratio).toBeCloseTo(1, 14);
  const fit = fitLoadingLaw("cake-intermediate", points);
  expect(fit.known && fit.law.cake).toBeCloseTo(1, 6);
  expect(fit.known && fit.law.intermediate).toBeCloseTo(1, 6);
});

test.each(pairs)("fitLoadingLaw(%s, points) says so when no law of the pair goes through both points", (name) => {
  const straight = [
    { load: 1, ratio: 2 },
    { load: 2, ratio: 2.5 },
  ];
  expect(fitLoadingLaw(name, straight)).toEqual({ known: false, reason: "grows too slowly for this law" });
  const sudden = [
    { load: 1, ratio: 1.001 },
    { load: 1.01, ratio: 1e6 },
  ];
  expect(fitLoadingLaw(name, sudden)).toEqual({ known: false, reason: "grows too fast for this law" });
});

test("through one tested point, a cake restricts most before it and complete blocking after it", () => {
  fc.assert(
    fc.property(logBetween(1.1, 100), between(0.05, 0.95), (ratio, share) => {
      const order: readonly LoadingLawName[] = ["complete", "standard", "intermediate", "cake"];
      const ratios = (load: number) =>
        order.map((name) => {
          const fit = fitLoadingLaw(name, [{ load: 1, ratio }]);
          return fit.known ? resistanceRatio(fit.law, load) : Number.NaN;
        });
      const [before, after] = [ratios(share), ratios(1 + share)];
      expect(before).toEqual([...before].sort((one, other) => one - other));
      expect(after).toEqual([...after].sort((one, other) => other - one));
    }),
  );
});

test("rescaleLaw(law, oldPerNew) is the same law in another unit of load", () => {
  fc.assert(
    fc.property(someLaw, logBetween(1e-3, 1e3), between(0, 0.9), (law, area, share) => {
      const load = someWay(law, share);
      const byElement = rescaleLaw(law, 1 / area);
      expect(resistanceRatio(byElement, load * area) / resistanceRatio(law, load)).toBeCloseTo(1, 9);
    }),
  );
});

test("capacityPoint(test, resistance): a filter with that restriction has risen by the test's rise", () => {
  const clean = filter({
    test: {
      points: [
        { drop: 1000, flow: 2e-5 },
        { drop: 4000, flow: 6e-5 },
      ],
      density: 830,
      dynamicViscosity: 2.49e-3,
    },
  });
  const test = { soil: 0.04, rise: 35e3, flow: 5.556e-5, dynamicViscosity: 2.49e-3 };
  const { load, ratio } = capacityPoint(test, clean.medium.linear.middle);
  const fuel = fuelState({ density: 830, kinematicViscosity: 3e-6 });
  const risen = solve({ ...clean, restriction: ratio }, fuel).drop(test.flow) - solve(clean, fuel).drop(test.flow);
  expect(load).toBe(0.04);
  expect(risen / test.rise).toBeCloseTo(1, 12);
});

test("assumedLoading(given) grows to the assumed rise at the handbook capacities, slowest at the low end", () => {
  const { low, middle, high } = assumedLoading({ make: "cellulose", cleanDrop: 2e3 });
  const ratio = 1 + 70e3 / 2e3;
  expect(loadAtRatio(low, ratio)).toBeCloseTo(0.06, 12);
  expect(loadAtRatio(middle, ratio)).toBeCloseTo(Math.sqrt(0.02 * 0.06), 12);
  expect(loadAtRatio(high, ratio)).toBeCloseTo(0.02, 12);
  const glass = assumedLoading({ make: "glass or synthetic", cleanDrop: 2e3 });
  expect(loadAtRatio(glass.high, ratio)).toBeCloseTo(0.08, 12);
  expect(loadAtRatio(glass.low, ratio)).toBeCloseTo(0.2, 12);
});

test("absorberLaw(stated) passes the stated point and shuts in the end", () => {
  fc.assert(
    fc.property(logBetween(1e-3, 1), logBetween(1.01, 100), (water, ratio) => {
      const law = absorberLaw({ water, ratio });
      expect(resistanceRatio(law, water) / ratio).toBeCloseTo(1, 10);
      expect(plugsAt(law)).toBeGreaterThan(water);
      expect(resistanceRatio(law, plugsAt(law))).toBe(Infinity);
    }),
  );
});
