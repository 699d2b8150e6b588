import type { System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { sized } from "../../../../../tests/properties/choose/arrangements.js";
import { compare } from "../../../../../tests/properties/choose/cases.js";
import { elementOf, litresAnHour, plainSystem, WARM } from "../../../../../tests/support/plainSystem.js";
import type { SizeOptions } from "./SizeOptions.js";
import { size } from "./size.js";
import { MOST_ARRANGEMENTS, sizeSteps } from "./sizeSteps.js";

// Between them these go through every kind of machine and nearly every way to fail; properties go through hundreds more.
const seeds = [1, 41, 58, 116, 148, 220, 276, 306, 310, 347, 366, 392];

test.each(seeds)("size(system, elements, options) agrees with every arrangement judged one by one, seed %i", (seed) => {
  expect(compare(seed, { elements: 2, parallel: 2, stages: 2 }).tried).toBeGreaterThan(0);
});

const HOUR = 3600;
/** 12 kPa at 200 L/h: two side by side cost 6 kPa, which a clean limit of 15 kPa less 8.14 kPa for the metre allows. */
const good = elementOf("good", { drop: 12e3, price: 30 });
const unknown = elementOf("unknown", { drop: 12e3, filter: { betas: undefined } as object });
const small: SizeOptions = { parallel: 2, stages: 1 };
const run = (options: SizeOptions = small, system: System = plainSystem, elements = [good]) =>
  sized(system, elements, options);

describe("sizeSteps(system, elements, options) that finds some", () => {
  test("answers yes, and says what was asked, what makes way and what was gone through", () => {
    const { arrangements, nearest, failed, effort, ...rest } = run();
    expect(rest).toEqual({
      question: "size",
      system: "plain",
      verdict: "yes",
      reasons: [],
      side: "suction",
      replaced: ["fitted"],
      asked: { code: "20/18/15", rating: null, interval: 100 * HOUR },
      temperatures: [WARM],
      candidates: 2,
      passing: 1,
      best: { cost: 0, vacuum: 0, changes: 0 },
    });
    expect(arrangements.map(({ stages }) => stages)).toEqual([[{ element: "good", count: 2 }]]);
    expect(nearest).toBeNull();
    expect(failed).toEqual([
      { by: "vacuum clean", count: 1, example: { stages: [{ element: "good", count: 1 }], bore: null } },
    ]);
    expect(effort).toEqual({ spared: 0, bySums: 2, byModel: 0, orders: 1, lives: 0 });
  });

  test("hands over after each element how many are done, ruled out ones among them, of how many", () => {
    const seen: [number, number][] = [];
    const steps = sizeSteps(plainSystem, [good, unknown], { parallel: 2, stages: 2 });
    for (let step = steps.next(); !step.done; step = steps.next()) seen.push([step.value.done, step.value.of]);
    // 1 good fails with 4 below it; 2 good pass, and the 4 below them; then 2 unknown with 4 below each.
    expect(seen).toEqual([
      [8, 20],
      [10, 20],
      [10, 20],
      [20, 20],
    ]);
  });

  test("tells its effort: what begins like one that fails is spared, and the rest judged by sums alone", () => {
    const answer = run({ parallel: 2, stages: 2 }, plainSystem, [good, unknown]);
    expect(answer.candidates).toBe(20);
    // 1 good and each of 2 unknown spare 4; sums judge 1 and 2 good, and both behind 2 good.
    expect(answer.effort).toMatchObject({ spared: 12, bySums: 4, byModel: 0, lives: 0 });
    expect(answer.failed.map(({ by, count }) => [by, count])).toEqual([
      ["catch not known", 12],
      ["vacuum clean", 7],
    ]);
  });

  test("takes 4 side by side and 2 stages where nothing is said, and keeps to a range of temperatures", () => {
    const { candidates, temperatures } = run({ temperatures: [WARM, WARM + 6], code: "22/20/17" });
    expect(candidates).toBe(4 + 16);
    expect(temperatures).toEqual([WARM, WARM + 3, WARM + 6]);
  });

  test("tries each bore once", () => {
    const suction = [{ part: "line", name: "hose", length: 0.1, bore: 0.02, roughness: 1e-6 }] as System["suction"];
    const system = { ...plainSystem, suction: [...suction, ...plainSystem.suction] };
    const answer = run({ ...small, bores: [0.02, 0.04, 0.02] }, system);
    expect(answer.candidates).toBe(4);
    expect(answer.arrangements.map(({ bore }) => bore).sort()).toEqual([0.02, 0.04]);
    expect(answer.failed[0]?.example.bore).toBe(0.02);
    expect(run(small, system).arrangements.map(({ bore }) => bore)).toEqual([null]);
  });

  test("keeps to what is asked instead of what the file says", () => {
    const rating = { beta: 1000, size: 2e-6 };
    const { asked, verdict } = run({ ...small, code: "22/20/17", rating, interval: 50 * HOUR });
    expect(asked).toEqual({ code: "22/20/17", rating, interval: 50 * HOUR });
    expect(verdict).toBe("yes");
    const finer = run({ ...small, rating: { beta: 1000, size: 0.5e-6 } });
    expect(finer.failed.map(({ by, count }) => [by, count])).toEqual([
      ["vacuum clean", 1],
      ["rating", 1],
    ]);
  });

  test("is content with a single stage tested to the fineness asked", () => {
    const coarse = elementOf("coarse", { drop: 1e3, filter: { betas: [{ size: 20e-6, beta: 75 }] } });
    const rating = { beta: 1000, size: 2e-6 };
    const answer = run({ parallel: 2, stages: 2, rating, keep: 100 }, plainSystem, [good, coarse]);
    const without = answer.arrangements.filter(({ stages }) => !stages.some(({ element }) => element === "good"));
    expect(without).toEqual([]);
    expect(answer.arrangements.some(({ stages }) => stages[0]?.element === "coarse")).toBe(true);
  });
});

describe("sizeSteps(system, elements, options) that finds none", () => {
  test("answers no, with what came nearest", () => {
    const { verdict, passing, best, arrangements, nearest } = run({ ...small, parallel: 1 });
    expect({ verdict, passing, best, arrangements }).toEqual({
      verdict: "no",
      passing: 0,
      best: { cost: null, vacuum: null, changes: null },
      arrangements: [],
    });
    // All of the clean limit is 15 kPa, the metre and 12 kPa are 20.1: as a share of the flow at change, 30 kPa.
    const head = 830 * 9.80665;
    expect(nearest).toMatchObject({
      by: "vacuum clean",
      stages: [{ element: "good", count: 1 }],
      bore: null,
      inHand: expect.closeTo((30e3 - head) / 12e3 - 1, 5),
    });
    // It grows by 12 kPa with 600 g, of 2 g an hour: the 9.86 kPa that are left last 246 h, and the few grains that slip by.
    const hours = (30e3 - head - 12e3) / 12e3 / (2 / 600);
    expect((nearest?.life ?? 0) / HOUR / hours).toBeGreaterThan(1);
    expect((nearest?.life ?? 0) / HOUR / hours).toBeLessThan(1.01);
  });

  test("names what fails by cleanliness as nearest before what fails by a limit of flow, the least code over first", () => {
    const coarse = (name: string, size: number) =>
      elementOf(name, {
        drop: 1e3,
        filter: {
          betas: [
            { size, beta: 75 },
            { size: 2 * size, beta: 1000 },
          ],
        },
      });
    const answer = run({ ...small, code: "9/6/3" }, plainSystem, [coarse("40", 40e-6), coarse("10", 10e-6)]);
    expect(answer.nearest).toMatchObject({ by: "cleanliness", stages: [{ element: "10", count: 2 }] });
  });

  test.each<[string, Partial<System>, SizeOptions, object[]]>([
    ["no service", { service: undefined } as object, {}, [{ code: "no interval" }]],
    ["nothing asked", { protection: undefined } as object, {}, [{ code: "nothing asked" }]],
    [
      "a longer interval than allowed",
      {},
      { interval: 101 * HOUR },
      [{ code: "longer than the manual allows", interval: 101 * HOUR, most: 100 * HOUR }],
    ],
  ])("cannot say with %s, and searches nothing", (_, more, options, reasons) => {
    const { arrangements, failed, ...answer } = run({ ...small, ...options }, { ...plainSystem, ...more });
    expect(answer).toMatchObject({
      question: "size",
      verdict: "cannot say",
      reasons,
      candidates: 2,
      passing: 0,
      best: { cost: null, vacuum: null, changes: null },
      nearest: null,
      effort: { spared: 0, bySums: 0, byModel: 0, orders: 0, lives: 0 },
    });
    expect([arrangements, failed]).toEqual([[], []]);
  });
});

describe("sizeSteps(system, elements, options) picks a side", () => {
  const sideOf = (system: Partial<System>, options: SizeOptions = {}) =>
    run({ parallel: 1, stages: 1, ...options }, { ...plainSystem, ...system }).side;
  const { filter } = elementOf("fine", { drop: 1e3 });

  test("suction where it has filters, or neither side has", () => {
    expect(sideOf({ delivery: [filter] })).toBe("suction");
    expect(sideOf({ suction: [], delivery: [] })).toBe("suction");
    expect(sideOf({ suction: [] })).toBe("suction");
  });

  test("delivery where only that has", () => {
    expect(sideOf({ suction: [], delivery: [filter] })).toBe("delivery");
  });

  test("as told", () => {
    expect(sideOf({ delivery: [filter] }, { side: "delivery" })).toBe("delivery");
    expect(sideOf({ suction: [], delivery: [filter] }, { side: "suction" })).toBe("suction");
  });

  test("on the delivery side by the feed pressure, which the pump's relief less the drop is", () => {
    const limits = { vacuumClean: 15e3, vacuumAtChange: 30e3, feedPressure: 60e3 };
    const system = { ...plainSystem, limits, suction: [], delivery: [filter] };
    // 80 kPa of relief leave 20 kPa over the limit: 20/1.2 kPa may be spent at the demand.
    const elements = [elementOf("17", { drop: 17e3 }), elementOf("16", { drop: 16e3 })];
    const answer = run({ parallel: 1, stages: 1, interval: HOUR, side: "delivery" }, system, elements);
    expect(answer.arrangements.map(({ stages, vacuum }) => [stages[0]?.element, vacuum])).toEqual([["16", 0]]);
    expect(answer.failed).toMatchObject([{ by: "feed pressure", count: 1 }]);
    // There sums do not tell how long it lasts, so its life is followed.
    expect(answer.effort.lives).toBe(1);
  });

  test("on the delivery side by the most that an element may carry, which is the demand", () => {
    const system = { ...plainSystem, suction: [], delivery: [filter] };
    const allowed = (mostFlow: number) => elementOf("own", { drop: 1e3, mostFlow: mostFlow * litresAnHour });
    const passing = (mostFlow: number) => run({ ...small, interval: HOUR }, system, [allowed(mostFlow)]).passing;
    expect([201, 199, 101, 99].map(passing)).toEqual([2, 1, 1, 0]);
  });
});

describe("sizeSteps(system, elements, options) refuses", () => {
  const refusal = (options: SizeOptions, system = plainSystem, elements = [good]) => {
    try {
      sized(system, elements, options);
    } catch (fault) {
      return (fault as Error).message;
    }
    return null;
  };

  test.each([
    ["parallel", 8],
    ["stages", 3],
    ["keep", 100_000],
  ] as const)("%s outside 1 to %i, and what is no whole number", (name, most) => {
    const words = (got: number) => `size requires ${name} to be a whole number from 1 to ${most}, got ${got}`;
    for (const got of [0, most + 1, 1.5, Number.NaN]) expect(refusal({ [name]: got })).toBe(words(got));
  });

  test("nothing at the ends of those ranges", () => {
    for (const options of [{ parallel: 8, stages: 1 }, { parallel: 1, stages: 3 }, { keep: 100_000 }, { keep: 1 }]) {
      expect(refusal({ ...small, ...options, interval: HOUR })).toBeNull();
    }
  });

  test("an empty catalogue, and a delivery side that is not there", () => {
    expect(refusal({}, plainSystem, [])).toBe("size requires elements to be one or more, got 0");
    expect(refusal({ side: "delivery" })).toBe(
      'size requires side to be suction, for no delivery side is in the file, got "delivery"',
    );
  });

  test("a code that is none", () => {
    expect(refusal({ ...small, code: "15" })).toBe(
      'parseCode requires code to be three scale numbers from 0 to 28 such as "18/16/13", got "15"',
    );
  });

  test("more than three million arrangements, and says what to do", () => {
    const many = Array.from({ length: 18 }, (_, at) => elementOf(`E${at}`, { drop: 1e3 }));
    expect(MOST_ARRANGEMENTS).toBe(3_000_000);
    expect(refusal({ parallel: 8, stages: 3 }, plainSystem, many)).toBe(
      "size requires number of arrangements to be at most 3000000; take fewer stages, fewer side by side, fewer bores or " +
        "a shorter catalogue, got 3006864",
    );
  });
});

describe("size(system, elements, options, run)", () => {
  const catalogue = Array.from({ length: 20 }, (_, at) => elementOf(`E${at}`, { drop: 12e3 }));

  test("is what the steps come to", async () => {
    expect(await size(plainSystem, [good], small)).toEqual(run());
  });

  test("tells how far it is, and lets others have their turn after every eighth step", async () => {
    const seen: number[] = [];
    const pauses: number[] = [];
    const told = {
      onProgress: ({ done }: { done: number }) => seen.push(done),
      pause: async () => void pauses.push(seen.length),
    };
    await size(plainSystem, catalogue, { parallel: 1, stages: 1 }, told);
    expect(seen).toEqual(Array.from({ length: 20 }, (_, at) => at + 1));
    expect(pauses).toEqual([8, 16]);
  });

  test("stops when told to, for the reason given or as what is aborted does", async () => {
    const stopped = (signal: { aborted: boolean; reason?: unknown }) =>
      size(plainSystem, catalogue, small, { signal }).catch((fault: unknown) => fault);
    expect(await stopped({ aborted: true, reason: "enough" })).toBe("enough");
    expect(await stopped({ aborted: true })).toMatchObject({ name: "AbortError", message: "stopped" });
    expect(await stopped({ aborted: false })).toHaveProperty("verdict");
  });
});
