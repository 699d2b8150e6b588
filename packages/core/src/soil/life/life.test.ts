import { describe, expect, test } from "vitest";
import { parallel, series, solve } from "../../circuit/index.js";
import { fuelState } from "../../fuel/index.js";
import { filter, line, orifice } from "../../parts/index.js";
import { type Supply, tank } from "../../supply/index.js";
import type { Efficiency } from "../capture/Capture.js";
import { captureOf } from "../capture/captureOf.js";
import { caughtMass } from "../capture/caughtMass.js";
import { throughFilter } from "../capture/throughFilter.js";
import { distributionFromMass } from "../distribution/distributionFromMass.js";
import { loadingLaw } from "../loading/loadingLaw.js";
import { resistanceRatio } from "../loading/resistanceRatio.js";
import { absorberLaw } from "../water/absorberLaw.js";
import { PLUGGED } from "./Fouling.js";
import type { Life, LifeGiven } from "./LifeKinds.js";
import { life } from "./life.js";
import type { SoilElement } from "./SoilElement.js";

const HOUR = 3600;
const fuel = fuelState({ density: 830, kinematicViscosity: 3e-6, vapourPressure: 0 });
const BURN = 1e-5;
const capture = captureOf({
  betas: [
    { size: 6e-6, beta: 3 },
    { size: 14e-6, beta: 100 },
  ],
});
const efficiency = capture.known ? capture.efficiency.middle : null;
const part = (name: string) => filter({ name, clean: { drop: 2000, flow: 5e-5, dynamicViscosity: 2.49e-3 } });
const hose = line({ length: 2, bore: 0.012, roughness: 1e-5 });
const law = loadingLaw("intermediate", { intermediate: 100 });
const plain = (name: string): SoilElement => ({ name, law, efficiency, soil: 0 });

/** All burnt, none sent back, so the tank holds what was delivered and rates are worked out by hand. */
function givenOf(elements: readonly SoilElement[], side: "series" | "parallel" = "series"): LifeGiven {
  const parts = elements.map(({ name }) => part(name));
  return {
    supply: {
      ambientPressure: 101325,
      tanks: [tank({ depth: 0.2 })],
      suction: side === "series" ? series(hose, ...parts) : series(hose, parallel(...parts)),
      pump: { kind: "fixed", flow: 1e-4, slip: null, relief: 1e5, reliefTo: "inlet" },
      delivery: null,
    },
    elements,
    phases: [{ duration: 100 * HOUR, fuel, loads: [{ share: 1, demand: { burn: BURN, return: 0 } }], freeWater: 0.1 }],
    delivered: distributionFromMass({ mass: 1e-3 }),
    held: "delivered fuel",
    points: [{ fuel, demand: 5e-5 }],
    limits: { vacuumAtChange: 20e3 },
    horizon: 20_000 * HOUR,
  };
}

describe("life(given) with an element that swells", () => {
  const swells = absorberLaw({ water: 0.05, ratio: 4 });

  test("keeps its share of the free water, kg as flow times time, where nothing is sent back", () => {
    const wet = { ...plain("a"), law: null, separates: 0.8, swells };
    const { end } = life(givenOf([wet]));
    expect(end?.water[0]).toBeCloseTo(0.8 * 0.1 * BURN * (end?.time ?? 0), 12);
    expect(end?.restriction[0]).toBeCloseTo(resistanceRatio(swells, end?.water[0] ?? 0), 9);
  });

  test("ends sooner than by soil alone, and sooner the more water there is", () => {
    const dry = life(givenOf([plain("a")])).end?.time ?? Number.NaN;
    const times = [0.01, 0.1, 1].map(
      (share) => life(givenOf([{ ...plain("a"), separates: share, swells }])).end?.time ?? 0,
    );
    expect(times).toEqual([...times].sort((a, b) => b - a));
    expect(times[0]).toBeLessThan(dry);
  });

  test("multiplies what soil and water do", () => {
    const { end } = life(givenOf([{ ...plain("a"), separates: 0.5, swells }]));
    const both = resistanceRatio(law, end?.soil[0] ?? 0) * resistanceRatio(swells, end?.water[0] ?? 0);
    expect(end?.restriction[0]).toBeCloseTo(both, 9);
  });

  test("gives a stage behind it only the water it let through", () => {
    const first = { ...plain("a"), separates: 0.9 };
    const { end } = life(givenOf([first, { ...plain("b"), separates: 1, swells }]));
    expect((end?.water[1] ?? 0) / (end?.water[0] ?? 1)).toBeCloseTo(0.1 / 0.9, 9);
  });

  test("goes on from the water it starts with", () => {
    const wet = { ...plain("a"), separates: 0.5, swells };
    const whole = life(givenOf([wet])).end?.time ?? 0;
    const half = life({ ...givenOf([wet]), horizon: whole / 2 });
    const [soil = 0] = half.moments.at(-1)?.soil ?? [];
    const [water = 0] = half.moments.at(-1)?.water ?? [];
    const rest = life(givenOf([{ ...wet, soil, water }])).end?.time ?? 0;
    expect(rest / (whole / 2)).toBeCloseTo(1, 9);
  });
});

describe("life(given)", () => {
  test("names the point at which the first limit is met", () => {
    const thin = { fuel: fuelState({ density: 830, kinematicViscosity: 1e-6, vapourPressure: 0 }), demand: 5e-5 };
    const given = givenOf([plain("a")]);
    expect(life({ ...given, points: [thin, ...given.points] }).end?.point).toBe(1);
    expect(life({ ...given, points: [...given.points, thin] }).end?.point).toBe(0);
  });

  test("does not follow water where nothing swells", () => {
    const { end } = life(givenOf([{ ...plain("a"), separates: 0.9 }]));
    expect(end?.water).toEqual([0]);
  });

  test("is a straight line where nothing hangs on the soil, and says what was burnt and when", () => {
    // One element, all burnt, none sent back: it catches its share of 1 g/m3 of 1e-5 m3/s, whatever it holds.
    const given = givenOf([plain("a")]);
    const { end, moments } = life(given);
    const caught = caughtMass(given.delivered, efficiency as Efficiency);
    expect(end?.soil[0]).toBeCloseTo(caught * BURN * (end?.time ?? 0), 12);
    expect(end?.burnt).toBeCloseTo(BURN * (end?.time ?? 0), 12);
    expect(moments[0]).toEqual({ time: 0, burnt: 0, soil: [0], water: [0], restriction: [1] });
    expect(moments.map(({ time }) => time)).toEqual([...moments.map(({ time }) => time)].sort((a, b) => a - b));
    expect(moments.at(-1)?.time).toBe(end?.time);
    // The limit is met there: 20 kPa of vacuum at 5e-5 m3/s, by the element alone but for the hose and the tank's head.
    expect(end?.by).toEqual({ kind: "limit", limit: "vacuum at change" });
  });

  test("has no end within a short horizon, and is over at once where a limit is broken by clean elements", () => {
    const given = givenOf([plain("a")]);
    const short = life({ ...given, horizon: 10 * HOUR });
    expect([short.end, short.moments.at(-1)?.time]).toEqual([null, 10 * HOUR]);
    const broken = life({ ...given, limits: { vacuumAtChange: 100 } });
    expect(broken.end).toEqual({ ...broken.moments[0], by: { kind: "limit", limit: "vacuum at change" }, point: 0 });
    expect([broken.end?.time, broken.moments.length]).toEqual([0, 1]);
  });

  test("ends at an element's terminal drop where that is met before any limit", () => {
    const given = { ...givenOf([plain("a"), plain("b")]), limits: {}, terminals: new Map([["a", 8000]]) };
    const { end } = life(given);
    expect(end?.by).toEqual({ kind: "terminal drop", element: "a" });
    // 2 kPa at 5e-5 m3/s when clean, so four times as much resists.
    expect(end?.restriction[0]).toBeCloseTo(4, 7);
    expect(life({ ...given, terminals: new Map([["a", 1e9]]), horizon: HOUR }).end).toBeNull();
    expect(life({ ...given, terminals: new Map([["a", 1000]]) }).end).toMatchObject({ time: 0, by: { element: "a" } });
  });

  test("does not ask for the clean limit, and reads the worse of both passages", () => {
    const given = givenOf([plain("a")]);
    const times = [{}, { vacuumClean: 1 }].map(
      (clean) => life({ ...given, limits: { ...given.limits, ...clean } }).end?.time,
    );
    expect(times[1]).toBe(times[0]);
    // 5e-5 m3/s in 6 mm is Re 3537: laminar flow holds on in the smooth passage only.
    const narrow = line({ length: 1, bore: 0.006, roughness: 1e-5 });
    const supply = { ...given.supply, suction: series(narrow, part("a")) };
    const { end } = life({ ...given, supply });
    const early = solve(series(narrow, { ...part("a"), restriction: end?.restriction[0] ?? 1 }), fuel, {
      passage: "early",
    });
    const kinetic = 830 * (5e-5 / ((Math.PI / 4) * 0.006 ** 2)) ** 2;
    expect(early.drop(5e-5) + kinetic - 830 * 9.80665 * 0.2).toBeCloseTo(20e3, 3);
  });

  test("takes a dirty delivery at its hour: all of it that the element catches, where all is burnt", () => {
    const given = { ...givenOf([plain("a")]), limits: {}, horizon: 400 * HOUR };
    const extra = distributionFromMass({ mass: 5e-3 });
    const dirty = { at: 150 * HOUR, volume: 0.2, extra };
    const soilAt = (life_: Life, hours: number) =>
      life_.moments.find(({ time }) => time === hours * HOUR)?.soil[0] ?? 0;
    const [usual, worse] = [life(given), life({ ...given, dirty })];
    expect(soilAt(worse, 100)).toBe(soilAt(usual, 100));
    const brought = 0.2 * caughtMass(extra, efficiency as Efficiency);
    expect((soilAt(worse, 200) - soilAt(usual, 200)) / brought).toBeCloseTo(1, 9);
    expect(life({ ...given, limits: { vacuumAtChange: 20e3 }, dirty: { ...dirty, volume: 1e3 } }).end).toMatchObject({
      time: 150 * HOUR,
      by: { kind: "limit", limit: "vacuum at change" },
    });
  });

  test("takes a dirty delivery round as often as fuel is sent back, past an element that catches nothing", () => {
    const nothing = { ...plain("b"), efficiency: null };
    const loads = [{ share: 1, demand: { burn: 1e-5, return: 3e-5 } }];
    const base = givenOf([{ ...plain("a"), law: null }, nothing]);
    const given = {
      ...base,
      phases: base.phases.map((phase) => ({ ...phase, loads })),
      limits: {},
      horizon: 200 * HOUR,
    };
    const extra = distributionFromMass({ mass: 5e-3 });
    const [usual, worse] = [given, { ...given, dirty: { at: 50 * HOUR, volume: 0.2, extra } }].map(
      (one) => life(one).moments.at(-1)?.soil ?? [],
    );
    // A quarter of what passes is burnt and gone; of the rest the element takes its share, time and again.
    const caught = extra.masses.reduce((sum, mass, bin) => {
      const share = efficiency?.[bin] ?? 0;
      return sum + (0.2 * mass * share) / (0.25 + 0.75 * share);
    }, 0);
    expect(((worse?.[0] ?? 0) - (usual?.[0] ?? 0)) / caught).toBeCloseTo(1, 9);
    expect(worse?.[1]).toBe(0);
  });

  test("of two tanks gives each path's element its own flow, and what is behind the joint the mixture", () => {
    // The same head and twice the resistance, so a third comes past an element that catches nothing.
    const given = givenOf([
      { ...plain("a"), law: null },
      { ...plain("c"), law: null },
    ]);
    const stiff = filter({ name: "b", clean: { drop: 4000, flow: 5e-5, dynamicViscosity: 2.49e-3 } });
    const tanks = [tank({ depth: 0.2, path: part("a") }), tank({ depth: 0.2, path: stiff })];
    const supply = { ...given.supply, tanks, suction: series(), delivery: part("c") };
    const { moments } = life({ ...given, supply, limits: {}, horizon: 10 * HOUR });
    const caught = (of: (share: number) => number) =>
      10 * HOUR * BURN * given.delivered.masses.reduce((sum, mass, bin) => sum + mass * of(efficiency?.[bin] ?? 0), 0);
    const [a = 0, c = 0] = moments.at(-1)?.soil ?? [];
    expect(a / caught((share) => (2 / 3) * share)).toBeCloseTo(1, 9);
    expect(c / caught((share) => (1 - (2 / 3) * share) * share)).toBeCloseTo(1, 9);
  });

  test("ends by the limit that is met first, of several, each over its own size", () => {
    const given = givenOf([plain("a")]);
    const by = (limits: LifeGiven["limits"], flow = 1e-4) => {
      const supply: Supply = {
        ...given.supply,
        pump: {
          kind: "fixed",
          flow,
          slip: { flow: 4e-5, rise: 1e5, dynamicViscosity: 2.49e-3 },
          relief: 1e5,
          reliefTo: "inlet",
        },
      };
      const { end } = life({ ...given, supply, limits });
      return [end?.by, Math.round((end?.restriction[0] ?? 0) * 100) / 100];
    };
    const [vacuum, feed] = [by({ vacuumAtChange: 20e3 }), by({ feedPressure: 60e3 })];
    expect(vacuum[0]).toEqual({ kind: "limit", limit: "vacuum at change" });
    expect(feed[0]).toEqual({ kind: "limit", limit: "feed pressure" });
    const both = by({ vacuumAtChange: 20e3, feedPressure: 60e3 });
    expect(both).toEqual((vacuum[1] as number) < (feed[1] as number) ? vacuum : feed);
    // 5.5e-5 m3/s less what slips against 12.5 kPa is the demand of 5e-5.
    const weak = by({ vacuumAtChange: 20e3 }, 5.5e-5);
    expect(weak[0]).toEqual({ kind: "limit", limit: "pump capacity" });
    expect(weak[1]).toBeLessThan(vacuum[1] as number);
  });

  test("of two elements in series gives the second what the first lets through, at the loads' mean flow", () => {
    // Twice round: burn 1e-5 and 3e-5 m3/s, half the time each; what is sent back is cleaned on its way.
    const loads = [1e-5, 3e-5].map((burn) => ({ share: 0.5, demand: { burn, return: 0 } }));
    const given = givenOf([plain("a"), plain("b")]);
    const phases = given.phases.map((phase) => ({ ...phase, loads }));
    const { moments } = life({ ...given, phases, limits: {}, horizon: 10 * HOUR });
    const [first = 0, second = 0] = moments.at(-1)?.soil ?? [];
    const behind = throughFilter(given.delivered, efficiency as Efficiency);
    expect(first / (2e-5 * 10 * HOUR * caughtMass(given.delivered, efficiency as Efficiency))).toBeCloseTo(1, 9);
    expect(second / (2e-5 * 10 * HOUR * caughtMass(behind, efficiency as Efficiency))).toBeCloseTo(1, 9);
    expect(moments.at(-1)?.burnt).toBeCloseTo(2e-5 * 10 * HOUR, 12);
  });

  test("with fuel sent back over the element takes less from a tank that is kept as clean as it can be", () => {
    // burn b of what is delivered, return 3b through the element again: each bin's tank falls to b / (b + 4b e - ...).
    const back = (held: "tank" | "delivered fuel") => {
      const given = givenOf([plain("a")]);
      const loads = [{ share: 1, demand: { burn: 1e-5, return: 3e-5 } }];
      const phases = given.phases.map((phase) => ({ ...phase, loads }));
      return life({ ...given, held, phases, limits: {}, horizon: 10 * HOUR }).moments.at(-1)?.soil[0] ?? 0;
    };
    const { masses } = givenOf([]).delivered;
    const share = (bin: number) => (efficiency as Efficiency)[bin] ?? 0;
    // What comes in is what is burnt and what is caught: the tank holds b m / (b + 3b e) over (1 - e) of it burnt.
    const tankHeld = masses.reduce((sum, mass, bin) => sum + mass * 4 * share(bin), 0);
    const fresh = masses.reduce((sum, mass, bin) => sum + (mass * 4 * share(bin)) / (1 + 3 * share(bin)), 0);
    expect(back("tank") / (1e-5 * 10 * HOUR * tankHeld)).toBeCloseTo(1, 9);
    expect(back("delivered fuel") / (1e-5 * 10 * HOUR * fresh)).toBeCloseTo(1, 9);
  });

  test("reckons what a pump that relieves to the tank takes round, and a stage behind it only the demand", () => {
    const given = givenOf([plain("a"), plain("b")]);
    const supply: Supply = {
      ...given.supply,
      suction: part("a"),
      pump: { kind: "fixed", flow: 1e-4, slip: null, relief: 1e5, reliefTo: "tank" },
      delivery: part("b"),
    };
    const { moments } = life({ ...given, supply, limits: {}, horizon: 10 * HOUR });
    // Of each size the tank loses what is burnt, and what the element takes out of the 1e-4 - 1e-5 m3/s that go back.
    const sum = (of: (share: number) => number) =>
      given.delivered.masses.reduce((total, mass, bin) => total + mass * of(efficiency?.[bin] ?? 0), 0);
    const inTank = (share: number) => BURN / (BURN + (1e-4 - BURN) * share);
    const [first = 0, second = 0] = moments.at(-1)?.soil ?? [];
    expect(first / (10 * HOUR * sum((share) => 1e-4 * share * inTank(share)))).toBeCloseTo(1, 9);
    expect(second / (10 * HOUR * sum((share) => BURN * (1 - share) * share * inTank(share)))).toBeCloseTo(1, 9);
  });

  test("mixes behind a bank what its branches let through", () => {
    // Half goes past an element that is not followed and catches nothing.
    const given = givenOf([
      { ...plain("a"), law: null },
      { ...plain("c"), law: null },
    ]);
    const supply = { ...given.supply, suction: parallel(part("a"), part("b")), delivery: part("c") };
    const { moments } = life({ ...given, supply, limits: {}, horizon: 10 * HOUR });
    const sum = (of: (share: number) => number) =>
      given.delivered.masses.reduce((total, mass, bin) => total + mass * of(efficiency?.[bin] ?? 0), 0);
    const [first = 0, second = 0] = moments.at(-1)?.soil ?? [];
    expect(first / (10 * HOUR * BURN * sum((share) => share / 2))).toBeCloseTo(1, 9);
    expect(second / (10 * HOUR * BURN * sum((share) => share * (1 - share / 2)))).toBeCloseTo(1, 9);
  });

  test("mixes behind a bank within a bank what all its branches let through", () => {
    // A third each: two elements that are followed, one that is not; what passes one of them has passed a coarse one before.
    const half = efficiency?.map((share) => share / 2) ?? null;
    const given = givenOf(["a", "b", "c", "e"].map((name) => ({ ...plain(name), law: null })));
    const elements = given.elements.map((one) => (one.name === "e" ? { ...one, efficiency: half } : one));
    const bank = parallel(part("a"), series(part("e"), parallel(part("b"), part("d"))));
    const supply = { ...given.supply, suction: bank, delivery: part("c") };
    const { moments } = life({ ...given, elements, supply, limits: {}, horizon: 10 * HOUR });
    // 2000 Pa a 5e-5 m3/s of one beside one and a half of it: three parts in five, and two that are halved again.
    const caught = (of: (share: number) => number) =>
      10 * HOUR * BURN * given.delivered.masses.reduce((sum, mass, bin) => sum + mass * of(efficiency?.[bin] ?? 0), 0);
    const [a = 0, b = 0, c = 0, e = 0] = moments.at(-1)?.soil ?? [];
    expect(a / caught((share) => 0.6 * share)).toBeCloseTo(1, 9);
    expect(e / caught((share) => 0.4 * (share / 2))).toBeCloseTo(1, 9);
    expect(b / caught((share) => 0.2 * (1 - share / 2) * share)).toBeCloseTo(1, 9);
    const passed = (share: number) => 0.6 * (1 - share) + (1 - share / 2) * (0.2 * (1 - share) + 0.2);
    expect(c / caught((share) => passed(share) * share)).toBeCloseTo(1, 9);
  });

  test("of two loads whose flows split unlike is the mean of both loads alone", () => {
    const given = givenOf([
      { ...plain("a"), law: null },
      { ...plain("b"), law: null },
    ]);
    // A hole holds back the more the faster it runs.
    const hole = orifice({ diameter: 0.004, dischargeCoefficient: 0.6 });
    const bank = parallel(series(hole, part("a")), part("b"));
    const supply = { ...given.supply, suction: bank };
    const soilOf = (burns: readonly number[]) => {
      const loads = burns.map((burn) => ({ share: 1 / burns.length, demand: { burn, return: 0 } }));
      const phases = given.phases.map((phase) => ({ ...phase, loads }));
      return life({ ...given, supply, phases, limits: {}, horizon: HOUR }).moments.at(-1)?.soil ?? [];
    };
    const [slow, fast, both] = [soilOf([5e-6]), soilOf([9e-5]), soilOf([5e-6, 9e-5])];
    expect((slow[0] ?? 0) / (slow[1] ?? 1)).toBeGreaterThan(1.05 * ((fast[0] ?? 0) / (fast[1] ?? 1)));
    both.forEach((soil, at) => {
      expect(soil / (((slow[at] ?? 0) + (fast[at] ?? 0)) / 2)).toBeCloseTo(1, 9);
    });
  });

  test.each([
    [{ separates: 1.2 }, "separates"],
    [{ separates: Number.NaN }, "separates"],
    [{ water: -1 }, "water"],
  ])("refuses %j and names it", (wrong, field) => {
    expect(() => life(givenOf([{ ...plain("a"), ...wrong }]))).toThrow(`life requires a's ${field}`);
  });

  test("goes on past an element that plugs beside one that does not", () => {
    // Complete blocking plugs for good; its neighbour, a cake, takes over all the flow.
    const plugs = { ...plain("a"), law: loadingLaw("complete", { complete: 500 }) };
    const cake = { ...plain("b"), law: loadingLaw("cake", { cake: 20 }) };
    const { moments, end } = life({ ...givenOf([plugs, cake], "parallel"), limits: { vacuumAtChange: 60e3 } });
    const last = end ?? moments.at(-1);
    expect(last?.soil[0]).toBeCloseTo(1 / 500, 6);
    expect(last?.restriction[0]).toBeGreaterThan(1e6);
    expect(last?.restriction[0]).toBeLessThanOrEqual(PLUGGED);
    expect(last?.soil[1]).toBeGreaterThan(5 * (last?.soil[0] ?? 0));
  });

  test("is the same in an unlike duplex however the year is cut, to a millionth of an hour", () => {
    const uneven = [plain("a"), { ...plain("b"), soil: 2e-3 }];
    const given = givenOf(uneven, "parallel");
    const [phase] = given.phases;
    const cut = { ...given, phases: phase ? [7, 31, 62].map((hours) => ({ ...phase, duration: hours * HOUR })) : [] };
    const [one, other] = [life(given).end?.time ?? 0, life(cut).end?.time ?? 1];
    expect(Math.abs(one - other)).toBeLessThan(1e-6 * HOUR);
  });
});
