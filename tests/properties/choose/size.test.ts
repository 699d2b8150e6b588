import type { System } from "@thirstline/spec/system";
import { size } from "@thirstline/study";
import { describe, expect, test } from "vitest";
import { demoElements, sized } from "./arrangements.js";
import { compare, heron } from "./cases.js";

const HOUR = 3600;

describe("size(system, elements, options) agrees with every arrangement judged one by one", () => {
  const seeds = Array.from({ length: 200 }, (_, seed) => seed);
  const met = new Set<string>();
  let passing = 0;
  let tried = 0;

  test.each(Array.from({ length: 20 }, (_, at) => at))(
    "on ten random catalogues from seed %i0 on",
    (tens) => {
      for (const seed of seeds.slice(tens * 10, tens * 10 + 10)) {
        const done = compare(seed, { elements: seed % 5 === 0 ? 3 : 2, parallel: 2, stages: 2 });
        for (const by of done.by) met.add(by);
        passing += done.passing;
        tried += done.tried;
      }
    },
    60_000,
  );

  test("and every way to fail was met on the way, and passing too", () => {
    expect([...met].sort()).toEqual([
      "capacity not known",
      "catch not known",
      "cleanliness",
      "feed pressure",
      "interval",
      "most flow",
      "pump capacity",
      "vacuum at change",
      "vacuum clean",
    ]);
    expect(passing).toBeGreaterThan(tried / 20);
    expect(passing).toBeLessThan(tried / 2);
  });

  // A quarter of an hour: THIRSTLINE_LONG=1 npx vitest run --project node tests/properties/choose/size.test.ts
  if (process.env.THIRSTLINE_LONG === "1") {
    test("on 200 catalogues of some 2,000 arrangements", () => {
      for (let seed = 1000; seed < 1200; seed++) compare(seed, { elements: 11, parallel: 4, stages: 2 });
    }, 3_600_000);
  }
});

describe("laws of size", () => {
  const all = demoElements("elements.csv").slice(0, 12);
  const options = { stages: 1, parallel: 4 } as const;

  test("an element more in the catalogue never makes the best worse", () => {
    let before: { cost: number; vacuum: number; changes: number } | null = null;
    for (let count = 1; count <= all.length; count++) {
      const { best, arrangements } = sized(heron, all.slice(0, count), options);
      const of = (at: number | null) => (at === null ? undefined : arrangements[at]);
      const now = {
        cost: of(best.cost)?.yearlyCost ?? Infinity,
        vacuum: of(best.vacuum)?.vacuum ?? Infinity,
        changes: of(best.changes)?.changesAYear ?? Infinity,
      };
      if (before) {
        expect(now.cost).toBeLessThanOrEqual(before.cost);
        expect(now.vacuum).toBeLessThanOrEqual(before.vacuum);
        expect(now.changes).toBeLessThanOrEqual(before.changes);
      }
      before = now;
    }
    expect(before?.cost).toBeLessThan(Infinity);
  });

  test.each<[string, System, object]>([
    ["vacuum clean", { ...heron, limits: { ...heron.limits, vacuumClean: 14e3 } }, {}],
    ["vacuum at change", { ...heron, limits: { ...heron.limits, vacuumAtChange: 22e3 } }, {}],
    ["feed pressure", { ...heron, limits: { ...heron.limits, feedPressure: 40e3 } }, {}],
    ["code", heron, { code: "12/7/0" }],
    ["rating", heron, { rating: { beta: 75, size: 10e-6 } }],
    ["interval", heron, { interval: 480 * HOUR }],
    ["temperature", heron, { temperatures: [259.15, 293.15] }],
  ])("a tighter limit of %s never adds an arrangement, and here takes some away", (_, system, tighter) => {
    const names = (answer: ReturnType<typeof sized>) =>
      answer.arrangements.map(({ stages }) => JSON.stringify(stages)).sort();
    const loose = names(sized(heron, all, { ...options, keep: 1000 }));
    const tight = names(sized(system, all, { ...options, keep: 1000, ...tighter }));
    expect(tight.filter((one) => !loose.includes(one))).toEqual([]);
    expect(tight.length).toBeLessThan(loose.length);
  });

  test("what is marked Pareto is what no other arrangement beats", () => {
    const { arrangements, passing } = sized(heron, demoElements("elements.csv"), { ...options, keep: 1000 });
    expect(arrangements).toHaveLength(passing);
    const figures = arrangements.map(({ yearlyCost, vacuum, elements }) => [yearlyCost ?? Infinity, vacuum, elements]);
    arrangements.forEach(({ pareto }, at) => {
      const own = figures[at] as number[];
      const beaten = figures.some(
        (other) =>
          other.every((one, place) => one <= (own[place] ?? 0)) && other.some((one, place) => one < (own[place] ?? 0)),
      );
      expect(pareto).toBe(!beaten);
    });
  });
});

test("size(system, elements, options, run) tells how far it is and stops when told to", async () => {
  const stop = { aborted: false, reason: new Error("enough") };
  const seen: number[] = [];
  const running = size(
    heron,
    demoElements("elements.csv"),
    {},
    {
      signal: stop,
      onProgress: ({ done }) => {
        seen.push(done);
        if (seen.length === 5) stop.aborted = true;
      },
    },
  );
  await expect(running).rejects.toThrow("enough");
  expect(seen).toHaveLength(5);
  expect(seen).toEqual([...seen].sort((one, other) => one - other));
});

test("size(system, elements) refuses more arrangements than it can go through, and says how many", () => {
  const steps = () => sized(heron, demoElements("elements.csv"), { stages: 3, parallel: 8 });
  expect(steps).toThrow(/at most 3000000; take fewer stages.*got 13881840/);
});
