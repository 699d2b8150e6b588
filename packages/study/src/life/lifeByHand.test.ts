import { assumedCapacities } from "@thirstline/core";
import type { System, SystemFilter, SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, litresAnHour, plainSystem, WARM } from "../../../../tests/support/plainSystem.js";
import { life } from "./life.js";
import { lifeTrace } from "./lifeTrace.js";

const HOUR = 3600;
const HEAD = 830 * 9.80665;
const ROOM = 30e3 - HEAD;
const COLD = 268.15;
const [lift] = plainSystem.suction as [SystemPart];
const own = (name: string, drop: number, more: object = {}): SystemFilter => ({
  ...elementOf(name, { drop }).filter,
  ...more,
});
const machine = (filters: readonly SystemPart[], more: object = {}): System => ({
  ...plainSystem,
  suction: [lift, ...filters],
  ...more,
});
/** A little more than 1: the few grains in a thousand that slip through make a life longer. */
const barely = (value: number | null | undefined) => {
  expect(value ?? 0).toBeGreaterThan(1);
  expect(value ?? 0).toBeLessThan(1.012);
};
/** Hours until one element of this drop, Pa, has taken what is left: 600 g make 12 kPa, and 2 g come in an hour. */
const hoursOf = (drop: number) => ((ROOM - drop) / 12e3) * 300;

describe("life(system) of one element, by round figures", () => {
  const answer = () => life(machine([own("own", 6e3)]));

  test("meets the limit at change when it has taken what it can", () => {
    const { end } = answer();
    barely((end?.time ?? 0) / HOUR / hoursOf(6e3));
    expect(end).toMatchObject({
      by: { kind: "limit", limit: "vacuum at change" },
      pointTemperature: WARM,
      burnt: expect.closeTo(((end?.time ?? 0) / HOUR) * 0.2, 9),
      years: expect.closeTo((end?.time ?? 0) / (1000 * HOUR), 12),
      distance: null,
      date: null,
    });
  });

  test("says which question, of what, how far it looked and by whose word it is changed", () => {
    const { question, system, pump, verdict, reasons, horizon, year, range, interval, change, partial, water, spread } =
      answer();
    expect({
      question,
      system,
      pump,
      verdict,
      reasons,
      horizon,
      year,
      range,
      interval,
      partial,
      water,
      spread,
    }).toEqual({
      question: "life",
      system: "plain",
      pump: "fixed",
      verdict: "lasts",
      reasons: [],
      horizon: 10 * 1000 * HOUR,
      year: 1000 * HOUR,
      range: null,
      interval: { time: 100 * HOUR, atMost: 100 * HOUR, source: null },
      partial: [],
      water: null,
      spread: null,
    });
    expect(change).toMatchObject({ time: 100 * HOUR, by: "manual's interval", burnt: expect.closeTo(20, 9) });
    const service = { interval: 100 * HOUR, atMost: 200 * HOUR, source: "manual" };
    expect(life(machine([own("own", 6e3)], { service })).interval).toEqual({
      time: 100 * HOUR,
      atMost: 200 * HOUR,
      source: "manual",
    });
  });

  test("tells of the element what it began and ended with, and of the gauges what they read", () => {
    expect(answer().elements).toEqual([
      {
        name: "own",
        soilAtStart: 0,
        soil: expect.closeTo(((ROOM - 6e3) / 12e3) * 0.6, 5),
        water: 0,
        restriction: expect.closeTo(ROOM / 6e3, 5),
        dropClean: expect.closeTo(6e3, 4),
        drop: expect.closeTo(ROOM, 0),
        share: 1,
      },
    ]);
    const { time, vacuum, feed } = answer().trace;
    expect([time[0], vacuum[0], feed[0]]).toEqual([
      0,
      expect.closeTo(HEAD + 6e3, 4),
      expect.closeTo(80e3 - HEAD - 6e3, 4),
    ]);
    expect(time.at(-1)).toBe(answer().end?.time);
    expect(vacuum.at(-1)).toBeCloseTo(30e3, 0);
    expect(feed.at(-1)).toBeCloseTo(50e3, 0);
    // A year of duty without seasons has no moment between.
    expect(time).toHaveLength(2);
  });

  test("tells of the fuel at each place on its way, ten scale numbers cleaner behind an element of beta 1000", () => {
    const { cleanliness, protection } = life(machine([own("own", 6e3)], { deliveredFuel: { code: "24/22/19" } }));
    expect(cleanliness.map(({ place, code }) => [place, code])).toEqual([
      ["as delivered", "24/22/19"],
      ["in the tank", "24/22/19"],
      ["at the lift pump", "14/12/9"],
      ["at the injection pump", "14/12/9"],
    ]);
    const [delivered, , , end] = cleanliness;
    expect((end?.counts[0] ?? 0) / (delivered?.counts[0] ?? 0)).toBeCloseTo(1e-3, 4);
    expect(answer().cleanliness[0]?.solids).toBeCloseTo(0.01, 9);
    expect(protection).toEqual({ code: "20/18/15", kept: true });
    const { protection: _, ...open } = machine([own("own", 6e3)]);
    expect(life(open).protection).toBeNull();
    expect(life({ ...open, protection: { code: "1/0/0" } }).protection).toEqual({ code: "1/0/0", kept: false });
  });

  test("names the engine, and no lift pump, where gravity does it", () => {
    const tanks = plainSystem.tanks.map((tank) => ({ ...tank, lowDepth: 2 }));
    const { cleanliness } = life({ ...machine([own("own", 1e3)]), tanks, pump: { kind: "none" } });
    expect(cleanliness.map(({ place }) => place)).toEqual(["as delivered", "in the tank", "at the engine"]);
  });

  test("thins the fuel in the tank by what returns filtered", () => {
    const demand = { burn: 100 * litresAnHour, return: 100 * litresAnHour };
    const rows = life(machine([own("own", 6e3)], { demand, deliveredFuel: { solids: 0.01 } })).cleanliness;
    // As much comes back clean as is burnt: half is left.
    expect(rows[1]?.solids).toBeCloseTo(0.005, 4);
    const held = life(
      machine([own("own", 6e3)], { demand, deliveredFuel: { solids: 0.01, held: "tank" } }),
    ).cleanliness;
    expect(held[1]?.solids).toBeCloseTo(0.01, 9);
  });

  test("says what its figures rest on", () => {
    expect(answer().cautions).toEqual([
      { code: "full load assumed" },
      { code: "capture", element: "own", caution: { code: "betas from test dust" } },
      { code: "held", held: "delivered fuel" },
    ]);
    const season = (share: number, temperature: number) => ({ name: "season", share, temperature });
    const duty = { hoursADay: 4, daysAYear: 250, seasons: [season(0.5, WARM), season(0.5, COLD)] };
    expect(life(machine([own("own", 1e3)], { duty })).cautions).toContainEqual({
      code: "judged at the worst",
      coldest: COLD,
    });
  });

  test("counts a dirty delivery that comes before the end, and says so; one that comes later is no matter", () => {
    const dirty = (after: number) =>
      life(
        machine([own("own", 6e3)], {
          deliveredFuel: {
            ...plainSystem.deliveredFuel,
            dirtyDelivery: { after: after * HOUR, volume: 20, solids: 0.02, dust: "A3 medium" },
          },
        }),
      );
    // 20 m3 with 10 mg/L more bring 200 g, a hundred hours' worth.
    const soon = dirty(50);
    barely((soon.end?.time ?? 0) / HOUR / (hoursOf(6e3) - 100));
    expect(soon.cautions).toContainEqual({ code: "dirty delivery", after: 50 * HOUR, volume: 20 });
    const late = dirty(5000);
    expect(late.end?.time).toBeCloseTo(answer().end?.time ?? 0, 0);
    expect(late.cautions.map(({ code }) => code)).not.toContain("dirty delivery");
  });

  test("says how much of the mass lies beyond what is counted, where it is more than a twentieth", () => {
    const shareOf = (deliveredFuel: object) =>
      life(machine([own("own", 6e3)], { deliveredFuel })).cautions.filter(({ code }) => code === "extrapolated");
    expect(shareOf({ solids: 0.01 })).toEqual([]);
    expect(shareOf({ code: "20/18/15" })).toEqual([{ code: "extrapolated", share: expect.any(Number) }]);
  });
});

describe("life(system).verdict", () => {
  const of = (interval: number | null, filter = own("own", 6e3), more: object = {}) => {
    const { service: _, ...open } = machine([filter], more);
    const { verdict, reasons, end } = life({
      ...open,
      ...(interval === null ? {} : { service: { interval: interval * HOUR } }),
    });
    return [verdict, reasons.map(({ code }) => code), end === null];
  };
  const clean = { deliveredFuel: { solids: 1e-9 } };

  test("is by the interval: lasts to it and beyond, early before it", () => {
    const hours = (life(machine([own("own", 6e3)])).end?.time ?? 0) / HOUR;
    expect(of(hours - 1)).toEqual(["lasts", [], false]);
    expect(of(hours)).toEqual(["lasts", [], false]);
    expect(of(hours + 1)).toEqual(["early", [], false]);
    expect(of(1e9, own("own", 6e3), clean)).toEqual(["lasts", [], true]);
  });

  test("is early where clean elements starve, with an interval and without", () => {
    expect(of(100, own("own", 25e3))).toEqual(["early", [], false]);
    expect(of(null, own("own", 25e3))).toEqual(["early", [], false]);
  });

  test("cannot be said without an interval, but where no limit is met at all", () => {
    expect(of(null)).toEqual(["cannot say", ["no service interval"], false]);
    expect(of(null, own("own", 6e3), clean)).toEqual(["lasts", ["no service interval"], true]);
  });

  test("cannot be said where nothing can be followed, and then there are no figures", () => {
    const { duty: _, ...idle } = machine([own("own", 6e3, { betas: undefined })]);
    expect(life(idle)).toEqual({
      question: "life",
      system: "plain",
      pump: "fixed",
      verdict: "cannot say",
      reasons: [{ code: "no duty" }, { code: "no growing element" }],
      cautions: [{ code: "capture unknown", element: "own", why: "no beta stated" }],
      horizon: 0,
      year: 0,
      end: null,
      range: null,
      interval: null,
      change: null,
      elements: [],
      partial: [],
      cleanliness: [],
      protection: null,
      water: null,
      trace: { time: [], vacuum: [], feed: [] },
      spread: null,
    });
  });

  test("cannot be said where the fuel is judged at no temperature, nothing passes, or no solids are stated", () => {
    const reasons = (more: object) => life(machine([own("own", 6e3)], more)).reasons.map(({ code }) => code);
    expect(reasons({ temperature: 243.15 })).toEqual(["no temperature to judge"]);
    expect(reasons({ deliveredFuel: { counts: { at4: 1 } } })).toEqual(["no solids"]);
    expect(reasons({ deliveredFuel: { water: 0.1 } })).toEqual(["no delivered fuel"]);
    expect(reasons({ suction: [lift, own("own", 6e3, { blocked: true })] })).toEqual(["shut", "no filter"]);
  });
});

describe("life(system).range", () => {
  const { capacityTest: _, loadingLaw: _law, ...untested } = own("own", 6e3);
  const rangeOf = (filters: readonly SystemPart[], more: object = {}) => life(machine(filters, more)).range;

  test("is none where all is tested, whatever stands shut off beside it", () => {
    expect(rangeOf([own("own", 6e3)])).toBeNull();
    const shut: SystemPart = {
      part: "bank",
      name: "pair",
      branches: [[own("own", 6e3)], [{ ...untested, name: "shut", area: 0.5, blocked: true } as SystemFilter]],
    };
    expect(rangeOf([shut])).toBeNull();
  });

  test("of a handbook's capacity is as wide as that", () => {
    const { least, most } = assumedCapacities.cellulose;
    const found = rangeOf([{ ...untested, area: 3 } as SystemFilter]);
    expect((found?.late ?? 0) / (found?.early ?? 1)).toBeCloseTo(most / least, 6);
    const { time = 0 } = life(machine([{ ...untested, area: 3 } as SystemFilter])).end ?? {};
    expect(found?.early).toBeLessThan(time);
    expect(found?.late).toBeGreaterThan(time);
  });

  test("of a capture known at one beta is early where it catches most, late where least", () => {
    const filter = own("own", 6e3, { betas: [{ size: 10e-6, beta: 75 }] });
    const { end, range } = life(machine([filter]));
    expect(range?.early).toBeLessThan(end?.time ?? 0);
    expect(range?.late).toBeGreaterThan(end?.time ?? Infinity);
  });

  test("of an estimated medium is early where it costs most, late where least", () => {
    const medium = { by: "fibre", diameter: 6e-6, solidity: 0.08, area: 0.5, thickness: 1e-3 } as const;
    const test = { ...elementOf("own", { drop: 6e3 }).filter.capacityTest, soil: 0.01 };
    const { end, range } = life(machine([own("own", 6e3, { medium, capacityTest: test })]));
    expect(range).not.toBeNull();
    expect(range?.early).toBeLessThanOrEqual(end?.time ?? 0);
    expect(range?.late).toBeGreaterThanOrEqual(end?.time ?? Infinity);
    expect(range?.early).toBeLessThan(range?.late ?? Infinity);
  });

  test("has no late end where it lies beyond what is looked ahead, nor any where both do", () => {
    const area = (most: number) => rangeOf([{ ...untested, area: most } as SystemFilter]);
    expect(area(1e4)).toEqual({ early: null, late: null });
    // Ten years of a duty so small that they lie between both ends.
    const once = area(3) as { early: number; late: number };
    const duty = { hoursADay: 1, daysAYear: Math.sqrt(once.early * once.late) / 10 / HOUR };
    const open = rangeOf([{ ...untested, area: 3 } as SystemFilter], { duty });
    expect(open).toEqual({ early: expect.closeTo(once.early, 0), late: null });
  });

  test("cannot say where the interval lies within it, and says from when to when", () => {
    const filter = { ...untested, area: 3 } as SystemFilter;
    const found = rangeOf([filter]) as { early: number; late: number };
    const verdict = (interval: number) => {
      const { verdict: of, reasons } = life(machine([filter], { service: { interval } }));
      return [of, reasons];
    };
    expect(verdict(found.early)).toEqual(["lasts", []]);
    expect(verdict(found.late + 1)).toEqual(["early", []]);
    expect(verdict(found.early + 1)).toEqual(["cannot say", [{ code: "unsettled", ...found }]]);
    expect(verdict(found.late)).toEqual(["cannot say", [{ code: "unsettled", ...found }]]);
  });
});

describe("life(system).partial", () => {
  const line: SystemPart = { part: "line", name: "line", length: 0.1, bore: 0.03, roughness: 1e-6 };
  const pair = (...branches: SystemPart[][]): SystemPart => ({ part: "bank", name: "pair", branches });

  test("of two alike side by side: the new one takes the flow in proportion as it resists less", () => {
    const { partial, elements, end } = life(machine([pair([own("A", 12e3)], [own("B", 12e3)])]));
    const ratio = elements[0]?.restriction ?? 0;
    expect(ratio).toBeCloseTo(ROOM / 6e3, 4);
    const half = expect.closeTo(0.5, 6);
    const [taken, left] = [expect.closeTo(ratio / (1 + ratio), 6), expect.closeTo(1 / (1 + ratio), 6)];
    expect(partial.map(({ element, shares }) => [element, shares])).toEqual([
      [
        "A",
        [
          { element: "A", before: half, after: taken },
          { element: "B", before: half, after: left },
        ],
      ],
      [
        "B",
        [
          { element: "A", before: half, after: left },
          { element: "B", before: half, after: taken },
        ],
      ],
    ]);
    const [first, second] = partial.map(({ time }) => time ?? 0);
    expect(first).toBeCloseTo(second ?? 0, 0);
    expect(first).toBeGreaterThan(0);
    expect(first).toBeLessThan(end?.time ?? 0);
  });

  test("of two in a row: a new first one lasts as long again, a new second one not at all; there is no flow to share", () => {
    const { partial, end, elements } = life(machine([own("first", 5e3), own("second", 1e3)]));
    expect(partial.map(({ element, shares }) => [element, shares])).toEqual([
      ["first", []],
      ["second", []],
    ]);
    const [first, second] = partial.map(({ time }) => (time ?? 0) / (end?.time ?? 1));
    expect(first).toBeCloseTo(1, 2);
    expect(second).toBeLessThan(0.01);
    expect(elements.map(({ share }) => share)).toEqual([expect.closeTo(1, 2), expect.closeTo(0, 2)]);
    expect((elements[0]?.share ?? 0) + (elements[1]?.share ?? 0)).toBeCloseTo(1, 9);
  });

  test("shares no flow in a bank of one open filter, nor in one with two in a branch; in a bank within a bank it does", () => {
    const sharesOf = (filters: readonly SystemPart[], more: object = {}) =>
      life(machine(filters, more)).partial.map(
        ({ element, shares }) => `${element}: ${shares.map((one) => one.element).join()}`,
      );
    const behind = { delivery: [own("fine", 1e3)] };
    expect(sharesOf([pair([own("A", 6e3)], [own("B", 6e3, { blocked: true })])], behind)).toEqual(["A: ", "fine: "]);
    expect(sharesOf([pair([own("A", 12e3)], [own("B", 6e3), own("C", 6e3)])])).toEqual(["A: ", "B: ", "C: "]);
    const nested = pair([line, own("A", 12e3), own("D", 1e3)], [line, pair([own("B", 24e3)], [own("C", 24e3)])]);
    expect(sharesOf([nested])).toEqual(["A: ", "D: ", "B: B,C", "C: B,C"]);
    const onTank = plainSystem.tanks.map((tank) => ({ ...tank, path: [pair([own("A", 12e3)], [own("B", 12e3)])] }));
    expect(sharesOf([], { tanks: onTank })).toEqual(["A: A,B", "B: A,B"]);
    expect(sharesOf([], { delivery: [pair([own("A", 60e3)], [own("B", 60e3)])] })).toEqual(["A: A,B", "B: A,B"]);
  });

  test("is none where clean elements starve, and has no time where none comes within ten years of duty", () => {
    expect(life(machine([own("first", 20e3), own("second", 5e3)])).partial).toEqual([]);
    const later = life(
      machine([own("own", 6e3)], {
        delivery: [own("fine", 1e3)],
        deliveredFuel: { solids: 0.01, dirtyDelivery: { after: HOUR, volume: 100, solids: 1 } },
      }),
    );
    expect(later.partial.map(({ element }) => element)).toEqual(["own", "fine"]);
  });
});

describe("life(system).water", () => {
  const WATER = 0.5;
  const separation = { efficiency: 0.9, flow: 200 * litresAnHour };
  const bowled = own("own", 6e3, { separation, bowl: 0.3e-3 });
  const wet = (filters: readonly SystemPart[], more: object = {}) =>
    life(machine(filters, { deliveredFuel: { ...plainSystem.deliveredFuel, water: WATER }, ...more })).water;

  test("keeps a separator's share of what is free, fills its bowl, and lets the rest go on", () => {
    const found = wet([bowled]);
    const free = found?.free ?? 0;
    const rate = free * 0.9 * 200 * litresAnHour;
    expect(found).toEqual({
      season: "all year",
      temperature: WARM,
      total: WATER,
      dissolved: expect.closeTo(WATER - free, 9),
      free,
      carriedOn: expect.closeTo(free * 0.1, 9),
      stages: [
        {
          element: "own",
          kind: "bowl",
          efficiency: expect.closeTo(0.9, 9),
          rate: expect.closeTo(rate, 12),
          // 0.3 L of water of 998 kg/m3.
          drainEvery: expect.closeTo((0.3e-3 * 998) / rate, 0),
          shutAfter: null,
        },
      ],
    });
    expect(free).toBeGreaterThan(0.3);
  });

  test("has what a second stage gets of the first's leavings, and no bowl of no stated size", () => {
    const found = wet([bowled, own("second", 1e3, { separation })]);
    expect(found?.stages.map(({ rate }) => rate / ((found.free ?? 0) * 200 * litresAnHour))).toEqual([
      expect.closeTo(0.9, 9),
      expect.closeTo(0.09, 9),
    ]);
    expect(found?.carriedOn).toBeCloseTo((found?.free ?? 0) * 0.01, 9);
    expect(found?.stages[1]?.drainEvery).toBeNull();
  });

  test("takes each load at its share, and the efficiency at the fullest", () => {
    const loads = [
      { load: 0.5, share: 0.5 },
      { load: 1, share: 0.5 },
    ];
    const found = wet([bowled], { duty: { hoursADay: 4, daysAYear: 250, loads } });
    const free = found?.free ?? 0;
    // At half the flow 99 % are kept.
    expect(found?.stages[0]?.efficiency).toBeCloseTo(0.9, 9);
    expect(found?.stages[0]?.rate).toBeCloseTo(free * 200 * litresAnHour * (0.5 * 0.9 + 0.5 * 0.5 * 0.99), 12);
    expect(found?.carriedOn).toBeCloseTo(free * (0.5 * 0.1 + 0.5 * 0.01), 9);
    expect(wet([bowled], { duty: { hoursADay: 4, daysAYear: 250, loads: [...loads].reverse() } })?.stages).toEqual(
      found?.stages.map((one) => ({
        ...one,
        rate: expect.closeTo(one.rate, 15),
        drainEvery: expect.closeTo(one.drainEvery ?? 0, 3),
      })),
    );
  });

  test("thins it in the tank by what comes back dry", () => {
    const demand = { burn: 100 * litresAnHour, return: 100 * litresAnHour };
    const found = wet([bowled], { demand });
    // What is in the tank is t: burn x delivered comes, (burn + return) x t goes through, and return x t / 10 comes back.
    const tank = 1 / (2 - 0.1);
    expect(found?.carriedOn).toBeCloseTo((found?.free ?? 0) * tank * 0.1, 9);
  });

  test("is that of the coldest season, when most is free", () => {
    const season = (name: string, share: number, temperature: number) => ({ name, share, temperature });
    const seasons = [season("warm", 0.5, 300), season("cold", 0.25, COLD), season("mild", 0.25, WARM)];
    expect(wet([bowled], { duty: { hoursADay: 4, daysAYear: 250, seasons } })).toMatchObject({
      season: "cold",
      temperature: COLD,
    });
  });

  test("says when an absorber would be shut by water alone; its body is drained of none", () => {
    const absorbs = { water: 0.2, restriction: 4 };
    const found = wet([own("own", 6e3, { absorbs, bowl: 0.3e-3 })]);
    const rate = (found?.free ?? 0) * 200 * litresAnHour;
    expect(found?.stages).toEqual([
      {
        element: "own",
        kind: "absorber",
        efficiency: 1,
        rate: expect.closeTo(rate, 12),
        drainEvery: null,
        // Standard blocking: the square root of the ratio falls straight, from 1 to a half at 200 g, so to 0 at 400.
        shutAfter: expect.closeTo(0.4 / rate, -1),
      },
    ]);
    expect(found?.carriedOn).toBeCloseTo(0, 12);
  });

  test("is none where no water is stated, and drains no bowl where none is free", () => {
    expect(life(machine([bowled])).water).toBeNull();
    const dry = life(machine([bowled], { deliveredFuel: { ...plainSystem.deliveredFuel, water: 1e-6 } })).water;
    expect(dry).toMatchObject({ free: 0, carriedOn: 0, stages: [{ rate: 0, drainEvery: null, shutAfter: null }] });
    expect(wet([own("own", 6e3)])?.stages).toEqual([]);
  });
});

describe("lifeTrace(system, answer, moments, until) of one element", () => {
  const system = machine([own("own", 6e3)]);
  const answer = () => life(system);
  const last = answer().end?.time ?? 0;

  test("reads the gauges at even steps to the end, straight lines for a cake", () => {
    const { time, vacuum, feed } = lifeTrace(system, answer(), 4, 0);
    // The last step may end a rounding before the end itself.
    const apart = time.flatMap((one, at) => (at > 0 && one - (time[at - 1] ?? 0) < 1 ? [] : [at]));
    const shares = [0, 0.25, 0.5, 0.75, 1];
    expect(apart.map((at) => time[at])).toEqual(shares.map((share) => expect.closeTo(share * last, -1)));
    expect(apart.map((at) => vacuum[at])).toEqual(
      shares.map((share) => expect.closeTo(HEAD + 6e3 + share * (ROOM - 6e3), 0)),
    );
    expect(time.length - apart.length).toBeLessThan(2);
    expect(feed).toEqual(vacuum.map((one) => expect.closeTo(80e3 - one, 3)));
  });

  test("cuts each season at even steps, and joins them", () => {
    const season = (name: string, share: number, temperature: number) => ({ name, share, temperature });
    const seasons = [season("first", 0.05, WARM), season("second", 0.15, WARM + 1), season("third", 0.8, WARM)];
    const other = machine([own("own", 6e3)], { duty: { hoursADay: 4, daysAYear: 250, seasons } });
    const own6 = life(other);
    const until = own6.end?.time ?? 0;
    const { time } = lifeTrace(other, own6, 8, 0);
    expect(until / HOUR).toBeGreaterThan(200);
    expect(time).toContainEqual(expect.closeTo(50 * HOUR, 3));
    expect(time).toContainEqual(expect.closeTo(200 * HOUR, 3));
    const steps = time.slice(1).map((one, at) => one - (time[at] ?? 0));
    expect(Math.max(...steps)).toBeLessThan((until / 8) * (1 + 1e-6));
    expect(Math.min(...steps)).toBeGreaterThan(0);
    expect(time.length).toBeLessThan(14);
  });

  test("goes as far as is asked where no limit is met, but not beyond what was looked ahead", () => {
    const clean = machine([own("own", 6e3)], { deliveredFuel: { solids: 1e-9 } });
    const found = life(clean);
    const asked = lifeTrace(clean, found, 4, 400 * HOUR);
    expect(asked.time).toEqual([0, 100, 200, 300, 400].map((hours) => expect.closeTo(hours * HOUR, 3)));
    expect(lifeTrace(clean, found, 10, 1e12).time.at(-1)).toBeCloseTo(found.horizon, 0);
    expect(lifeTrace(clean, found, 4, 0)).toBe(found.trace);
  });

  test("is the answer's own where it starves from the first, or nothing can be followed", () => {
    const starved = machine([own("own", 25e3)]);
    const found = life(starved);
    expect(lifeTrace(starved, found, 4, 1e9)).toBe(found.trace);
    const { duty: _, ...idle } = system;
    const unknown = life(idle);
    expect(lifeTrace(idle, unknown, 4, 1e9)).toBe(unknown.trace);
  });
});

describe("life(system) whose element water swells", () => {
  // 4 times as restricted with 200 g of water: the square root of the ratio falls straight, so to 0 at 400 g.
  const swelling = own("swelling", 6e3, { absorbs: { water: 0.2, restriction: 4 } });
  const system = machine([swelling, own("behind", 1e3)], { deliveredFuel: { solids: 1e-9, water: 0.5 } });
  const answer = () => life(system);
  const ratio = (ROOM - 1e3) / 6e3;
  const water = 0.4 * (1 - 1 / Math.sqrt(ratio));

  test("ends where it has taken so much water, which its row tells", () => {
    const free = answer().water?.free ?? Number.NaN;
    expect(answer().elements[0]).toMatchObject({
      water: expect.closeTo(water, 4),
      restriction: expect.closeTo(ratio, 3),
    });
    expect(answer().elements[1]).toMatchObject({ water: 0, restriction: expect.closeTo(1, 6) });
    expect((answer().end?.time ?? 0) / HOUR).toBeCloseTo(water / (free * 0.2), 1);
  });

  test("lasts as long again with it new and dry, and not at all with the other new", () => {
    const [first, second] = answer().partial.map(({ time }) => time ?? 0);
    expect((first ?? 0) / (answer().end?.time ?? 1)).toBeCloseTo(1, 3);
    expect(second).toBeLessThan(60);
  });
});

describe("life(system).trace and .elements", () => {
  test("have the moments at which the season changes on the way, and the end once", () => {
    const season = (name: string, share: number, temperature: number) => ({ name, share, temperature });
    const seasons = [season("first", 0.05, WARM), season("second", 0.15, WARM + 1), season("third", 0.8, WARM)];
    const { trace, end } = life(machine([own("own", 6e3)], { duty: { hoursADay: 4, daysAYear: 250, seasons } }));
    const last = end?.time ?? 0;
    expect(last / HOUR).toBeGreaterThan(200);
    expect(trace.time).toEqual([0, 50 * HOUR, 200 * HOUR, last].map((time) => expect.closeTo(time, 3)));
    const soil = trace.vacuum.map((one) => ((one - (trace.vacuum[0] ?? 0)) / (30e3 - (trace.vacuum[0] ?? 0))) * last);
    expect(soil).toEqual(trace.time.map((time) => expect.closeTo(time, -4)));
  });

  test("go to the last year looked ahead where no limit is met", () => {
    const { trace, end, horizon } = life(machine([own("own", 6e3)], { deliveredFuel: { solids: 1e-9 } }));
    expect(end).toBeNull();
    expect(trace.time.at(-1)).toBeCloseTo(horizon, 0);
  });

  test("have no share of a rise where clean elements starve, since none has risen", () => {
    expect(life(machine([own("own", 25e3)])).elements).toMatchObject([
      { share: 0, restriction: 1, dropClean: expect.closeTo(25e3, 3) },
    ]);
  });
});

describe("life(system).range with an element beside that is tested", () => {
  const { capacityTest: _, loadingLaw: _law, ...untested } = own("own", 6e3);
  const beside = { delivery: [own("tested", 1e3)] };

  test.each<[string, object]>([
    ["a handbook's capacity", { ...untested, area: 3 }],
    ["one beta", own("own", 6e3, { betas: [{ size: 10e-6, beta: 75 }] })],
    [
      "an estimated medium",
      own("own", 6e3, { medium: { by: "rating", size: 20e-6, kind: "nominal", area: 0.5, thickness: 6e-4 } }),
    ],
  ])("is still as wide as what is only estimated of the one: %s", (_, filter) => {
    const { range } = life(machine([filter as SystemFilter], beside));
    expect(range?.early).toBeLessThan(range?.late ?? Infinity);
  });
});
