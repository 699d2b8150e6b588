import { describe, expect, test } from "vitest";
import { parallel, series } from "../../circuit/index.js";
import { fuelState } from "../../fuel/index.js";
import { filter, line } from "../../parts/index.js";
import { tank } from "../../supply/index.js";
import { captureOf } from "../capture/captureOf.js";
import { distributionFromMass } from "../distribution/distributionFromMass.js";
import { loadingLaw } from "../loading/loadingLaw.js";
import { resistanceRatio } from "../loading/resistanceRatio.js";
import { absorberLaw } from "../water/absorberLaw.js";
import { PLUGGED } from "./Fouling.js";
import type { LifeGiven } from "./LifeKinds.js";
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
