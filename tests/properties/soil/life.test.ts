import {
  capacityPoint,
  captureOf,
  type DutyPhase,
  distributionFromMass,
  filter,
  fitLoadingLaw,
  fuelState,
  type LifeGiven,
  type LoadingLawName,
  life,
  line,
  loadingLaw,
  parallel,
  rescaleLaw,
  resistanceRatio,
  type SoilElement,
  series,
  tank,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";

const HOUR = 3600;
const logBetween = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

/** What a random machine is made of. */
interface Machine {
  readonly viscosity: number;
  readonly burn: number;
  readonly returned: number;
  readonly solids: number;
  readonly drop: number;
  readonly capacity: number;
  readonly rise: number;
  readonly law: LoadingLawName;
  readonly hours: number;
}

const machine: fc.Arbitrary<Machine> = fc.record({
  viscosity: logBetween(1.5e-6, 1e-5),
  burn: logBetween(1e-6, 5e-5),
  returned: logBetween(1e-7, 5e-5),
  solids: logBetween(2e-4, 2e-2),
  drop: logBetween(500, 4000),
  capacity: logBetween(2e-3, 0.2),
  rise: logBetween(5e3, 8e4),
  law: fc.constantFrom("cake", "intermediate", "standard", "complete") as fc.Arbitrary<LoadingLawName>,
  hours: logBetween(300, 3000),
});

const FLOW = 5e-5;
const BETAS = captureOf({
  betas: [
    { size: 6e-6, beta: 3 },
    { size: 14e-6, beta: 100 },
  ],
});

function stateOf({ viscosity }: Machine) {
  return fuelState({ density: 830, kinematicViscosity: viscosity, vapourPressure: 0 });
}

/** A filter of the machine, `size` times as large: so much less restriction, so much more room for soil. */
function filterOf(made: Machine, name: string, size = 1) {
  const dynamicViscosity = 3e-6 * 830;
  const part = filter({ name, clean: { drop: made.drop / size, flow: FLOW, dynamicViscosity } });
  const whole = filter({ clean: { drop: made.drop, flow: FLOW, dynamicViscosity } });
  const test = { soil: made.capacity, rise: made.rise, flow: FLOW, dynamicViscosity };
  const fit = fitLoadingLaw(made.law, [capacityPoint(test, whole.medium.linear.middle)]);
  if (!fit.known || !BETAS.known) throw new Error("the machine's filter cannot be");
  const element: SoilElement = {
    name,
    law: rescaleLaw(fit.law, 1 / size),
    efficiency: BETAS.efficiency.middle,
    soil: 0,
  };
  return { part, element };
}

function givenOf(made: Machine, built: readonly ReturnType<typeof filterOf>[], side: "series" | "parallel"): LifeGiven {
  const fuel = stateOf(made);
  const demand = { burn: made.burn, return: made.returned };
  const parts = built.map(({ part }) => part);
  const hose = line({ length: 2, bore: 0.012, roughness: 1e-5 });
  const filters = side === "series" || parts.length < 2 ? series(...parts) : parallel(...parts);
  const total = made.burn + made.returned;
  return {
    supply: {
      ambientPressure: 101325,
      tanks: [tank({ depth: 0.2 })],
      suction: series(hose, filters),
      pump: { kind: "fixed", flow: 4 * total, slip: null, relief: 1e5, reliefTo: "inlet" },
      delivery: null,
    },
    elements: built.map(({ element }) => element),
    phases: [{ duration: made.hours * HOUR, fuel, loads: [{ share: 1, demand }] }],
    delivered: distributionFromMass({ mass: made.solids }),
    held: "delivered fuel",
    points: [{ fuel, demand: total }],
    limits: { vacuumAtChange: 40e3 },
    horizon: 3000 * HOUR,
  };
}

const timeOf = (given: LifeGiven) => life(given).end?.time ?? Infinity;
const runs = { numRuns: 40 };

test("life(given) is no shorter with cleaner fuel", () => {
  fc.assert(
    fc.property(machine, fc.double({ min: 0.1, max: 0.99, noNaN: true }), (made, share) => {
      const built = [filterOf(made, "a")];
      const cleaner = timeOf(givenOf({ ...made, solids: share * made.solids }, built, "series"));
      expect(cleaner).toBeGreaterThanOrEqual(timeOf(givenOf(made, built, "series")) * (1 - 1e-9));
    }),
    runs,
  );
});

test("life(given) of one element is no shorter when it is larger", () => {
  fc.assert(
    fc.property(machine, fc.double({ min: 1, max: 5, noNaN: true }), (made, size) => {
      const larger = timeOf(givenOf(made, [filterOf(made, "a", size)], "series"));
      expect(larger).toBeGreaterThanOrEqual(timeOf(givenOf(made, [filterOf(made, "a")], "series")) * (1 - 1e-9));
    }),
    runs,
  );
});

test("life(given) keeps equal elements side by side equal", () => {
  fc.assert(
    fc.property(machine, (made) => {
      const { end, moments } = life(givenOf(made, [filterOf(made, "a"), filterOf(made, "b")], "parallel"));
      for (const { soil } of [...moments, ...(end ? [end] : [])]) {
        expect(Math.abs((soil[0] ?? 0) - (soil[1] ?? 0))).toBeLessThanOrEqual(1e-9 * (soil[0] ?? 0));
      }
    }),
    runs,
  );
});

test("life(given) never lets soil or restriction fall", () => {
  fc.assert(
    fc.property(machine, fc.constantFrom("series" as const, "parallel" as const), (made, side) => {
      const uneven = [filterOf(made, "a"), filterOf({ ...made, drop: 2 * made.drop, law: "cake" }, "b", 0.5)];
      const { moments } = life(givenOf(made, uneven, side));
      moments.slice(1).forEach((moment, at) => {
        const before = moments[at];
        moment.soil.forEach((soil, place) => {
          expect(soil).toBeGreaterThanOrEqual(before?.soil[place] ?? 0);
          expect(moment.restriction[place]).toBeGreaterThanOrEqual(before?.restriction[place] ?? 1);
        });
      });
    }),
    runs,
  );
});

test("life(given) does not depend on how finely its duty is cut", () => {
  fc.assert(
    fc.property(machine, fc.integer({ min: 2, max: 9 }), (made, pieces) => {
      const uneven = [filterOf(made, "a"), filterOf({ ...made, drop: 3 * made.drop }, "b", 0.6)];
      const whole = givenOf(made, uneven, "parallel");
      const phase = whole.phases[0] as DutyPhase;
      const cut = Array.from({ length: pieces }, () => ({ ...phase, duration: phase.duration / pieces }));
      const [one, many] = [timeOf(whole), timeOf({ ...whole, phases: cut })];
      if (one === Infinity || many === Infinity) expect(many).toBe(one);
      else expect(Math.abs(many - one)).toBeLessThanOrEqual(1e-6 * HOUR + 1e-8 * one);
    }),
    runs,
  );
});

test("life(given) ends where the limit is just met, to a millionth of an hour", () => {
  fc.assert(
    fc.property(machine, (made) => {
      const given = givenOf(made, [filterOf(made, "a"), filterOf(made, "b", 0.7)], "parallel");
      const { end } = life(given);
      fc.pre(end !== null && end.time > 0);
      const atEnd = (time: number) => life({ ...given, horizon: time }).end;
      expect(atEnd((end?.time ?? 0) - 1e-6 * HOUR)).toBeNull();
      expect(atEnd((end?.time ?? 0) + 1e-6 * HOUR)).not.toBeNull();
    }),
    runs,
  );
});

test("life(given) of one element in series is its soil over its rate, worked out by hand", () => {
  // 36 L/h burnt and none returned, 1 mg/L of which the element catches share e: e * 36 mg an hour. The limit leaves room
  // for a restriction r = (40 kPa - rest) / clean drop, which a cake law of 1/g reaches at r - 1 grams.
  const made: Machine = {
    viscosity: 3e-6,
    burn: 1e-5,
    returned: 1e-15,
    solids: 1e-3,
    drop: 10e3,
    capacity: 1e-3,
    rise: 10e3,
    law: "cake",
    hours: 1000,
  };
  const given = givenOf(made, [filterOf(made, "a")], "series");
  const { end } = life(given);
  const caught = (end?.soil[0] ?? 0) / ((end?.burnt ?? 1) * 1e-3);
  const rate = caught * 1e-5 * 1e-3;
  // The tank's head and hose leave 40 kPa + 830 * 9.80665 * 0.2 - hose for the filter at its 1/5 of the tested flow.
  const hose = (128 * 3e-6 * 830 * 2 * 1e-5) / (Math.PI * 0.012 ** 4);
  const kinetic = 830 * (1e-5 / ((Math.PI / 4) * 0.012 ** 2)) ** 2;
  const ratio = (40e3 + 830 * 9.80665 * 0.2 - hose - kinetic) / (10e3 / 5);
  expect(end?.restriction[0]).toBeCloseTo(ratio, 6);
  expect(end?.time ?? 0).toBeCloseTo(((ratio - 1) * 1e-3) / rate, 0);
  expect(resistanceRatio(loadingLaw("cake", { cake: 1000 }), end?.soil[0] ?? 0)).toBeCloseTo(ratio, 6);
});
