import { petrolClasses, testDusts, twoKConstants } from "@thirstline/core";
import type {
  System,
  SystemDemand,
  SystemDuty,
  SystemFilter,
  SystemFuel,
  SystemMedium,
  SystemPart,
  SystemPump,
  SystemTank,
} from "@thirstline/spec";
import fc from "fast-check";
import { logUniform, uniform } from "./random.js";

// Random systems that a file could hold: every kind of fuel, part, pump, tank and duty, within the ranges spec takes.

const L_PER_H = 1e-3 / 3600;
const aFlow = logUniform(0.2 * L_PER_H, 5000 * L_PER_H);
const aBore = logUniform(0.002, 0.08);
const aDensity = uniform(700, 900);
const aDynamicViscosity = logUniform(3e-4, 0.02);

const aFuel: fc.Arbitrary<SystemFuel> = fc.oneof(
  fc.record({ kind: fc.constant("diesel" as const), grade: fc.constantFrom("summer", "winter", "arctic") }),
  fc.record({
    kind: fc.constant("biodiesel" as const),
    share: fc.oneof(fc.constantFrom(0.05, 0.07, 0.2, 1), uniform(0.01, 1)),
    feedstock: fc.constantFrom("soy", "rapeseed"),
    grade: fc.constantFrom("summer", "winter", "arctic"),
  }),
  fc.constant({ kind: "paraffinic" as const }),
  fc.constant({ kind: "kerosene" as const }),
  fc.record({
    kind: fc.constant("petrol" as const),
    class: fc.constantFrom(...petrolClasses.map((one) => `${one.standard} ${one.class}`)),
    ethanol: fc.constantFrom(0, 0.05, 0.1, 0.85),
  }),
  fc.record({
    kind: fc.constant("premix" as const),
    ratio: fc.integer({ min: 16, max: 100 }),
    class: fc.constantFrom("EN 228 A", "EN 228 D1"),
    ethanol: fc.constantFrom(0, 0.05, 0.1),
  }),
);

const aMedium: fc.Arbitrary<SystemMedium> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .record({ drop: logUniform(100, 3e4), flow: aFlow, dynamicViscosity: aDynamicViscosity })
      .map(({ drop, flow, dynamicViscosity }) => ({
        by: "flow test" as const,
        points: [{ drop, flow }],
        dynamicViscosity,
      })),
  },
  fc
    .record({
      drop: logUniform(100, 3e4),
      flow: aFlow,
      slower: uniform(0.2, 0.8),
      linearShare: uniform(0, 1),
      dynamicViscosity: aDynamicViscosity,
      density: aDensity,
    })
    .map(({ drop, flow, slower, linearShare, dynamicViscosity, density }) => ({
      by: "flow test" as const,
      points: [
        { drop: drop * (linearShare * slower + (1 - linearShare) * slower ** 2), flow: flow * slower },
        { drop, flow },
      ],
      dynamicViscosity,
      density,
    })),
  fc.record({
    by: fc.constant("medium" as const),
    area: logUniform(0.01, 10),
    thickness: logUniform(1e-4, 5e-3),
    permeability: logUniform(1e-14, 1e-10),
    inertia: fc.oneof(fc.constant(0), logUniform(1e3, 1e7)),
  }),
  fc.record({
    by: fc.constant("rating" as const),
    size: logUniform(2e-6, 5e-5),
    kind: fc.constantFrom("nominal", "absolute", "beta 75", "beta 200", "beta 1000"),
    area: logUniform(0.01, 10),
    thickness: logUniform(1e-4, 3e-3),
  }),
  fc.record({
    by: fc.constant("fibre" as const),
    diameter: logUniform(1e-6, 5e-5),
    solidity: uniform(0.02, 0.3),
    area: logUniform(0.01, 10),
    thickness: logUniform(1e-4, 3e-3),
  }),
);

const aFilter: fc.Arbitrary<SystemFilter> = fc
  .record({
    medium: aMedium,
    style: fc.constantFrom("spin-on", "cartridge", "in-line", "bowl", "in-tank"),
    area: logUniform(0.05, 10),
    blocked: fc.integer({ min: 0, max: 19 }).map((one) => one === 0),
    reversed: fc.integer({ min: 0, max: 19 }).map((one) => one === 0),
    restriction: fc.oneof({ weight: 4, arbitrary: fc.constant(1) }, { weight: 1, arbitrary: logUniform(1, 30) }),
    housing: fc.option(fc.record({ k: uniform(0, 10), port: logUniform(0.004, 0.04) }), { nil: undefined }),
    capture: fc.option(
      fc.record({ size: logUniform(3e-6, 3e-5), beta: fc.constantFrom(2, 10, 75, 200, 1000), wider: uniform(1.5, 3) }),
      { nil: undefined },
    ),
    soil: fc.option(
      fc.record({
        perArea: logUniform(0.02, 0.2),
        rise: logUniform(5e3, 1e5),
        flow: aFlow,
        dynamicViscosity: aDynamicViscosity,
      }),
      { nil: undefined },
    ),
    leak: fc.option(uniform(0, 0.1), { nil: undefined }),
    make: fc.option(fc.constantFrom("cellulose", "glass or synthetic"), { nil: undefined }),
    separation: fc.option(fc.record({ efficiency: uniform(0.5, 0.99), flow: aFlow }), { nil: undefined }),
    absorbs: fc.option(fc.record({ water: logUniform(0.01, 1), restriction: uniform(1.5, 20) }), {
      nil: undefined,
      freq: 9,
    }),
  })
  .map(({ medium, area: stated, restriction, capture, soil, ...rest }) => {
    const area = "area" in medium ? medium.area : stated;
    return defined({
      part: "filter" as const,
      name: "",
      ...rest,
      medium,
      area,
      restriction: restriction === 1 ? undefined : restriction,
      betas: capture && [
        { size: capture.size, beta: capture.beta },
        { size: capture.size * capture.wider, beta: Math.min(5000, capture.beta * 3) },
      ],
      capacityTest: soil && {
        soil: soil.perArea * area,
        rise: soil.rise,
        flow: soil.flow,
        dynamicViscosity: soil.dynamicViscosity,
        density: 830,
      },
    }) as SystemFilter;
  });

const aFrictionPart: fc.Arbitrary<SystemPart> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      part: fc.constant("line" as const),
      name: fc.constant("line"),
      length: logUniform(0.1, 50),
      bore: aBore,
      roughness: fc.constantFrom(0, 1.5e-6, 1e-5, 4.5e-5),
    }),
  },
  fc.record({
    part: fc.constant("fitting" as const),
    name: fc.constant("fitting"),
    bore: aBore,
    count: fc.integer({ min: 1, max: 8 }),
    loss: fc.oneof(
      fc.record({ by: fc.constant("k" as const), k: uniform(0.1, 10) }),
      fc.record({
        by: fc.constant("two-K" as const),
        row: fc.constantFrom(...(Object.keys(twoKConstants) as (keyof typeof twoKConstants)[])),
      }),
      fc.record({
        by: fc.constant("equivalent length" as const),
        bores: uniform(1, 400),
        roughness: fc.constant(1.5e-6),
      }),
    ),
  }),
  fc.record({
    part: fc.constant("valve" as const),
    name: fc.constant("valve"),
    kv: logUniform(0.05 / 3600, 50 / 3600),
    opening: fc.oneof(fc.constant(0), logUniform(100, 5000)),
    oneWay: fc.constant(true),
  }),
  fc.record({
    part: fc.constant("orifice" as const),
    name: fc.constant("orifice"),
    diameter: logUniform(0.002, 0.03),
    dischargeCoefficient: uniform(0.55, 0.95),
  }),
  fc.record({
    part: fc.constant("strainer" as const),
    name: fc.constant("strainer"),
    aperture: logUniform(5e-5, 1e-3),
    wire: logUniform(3e-5, 3e-4),
    area: logUniform(1e-4, 0.05),
  }),
  { weight: 4, arbitrary: aFilter },
);

const aRise: fc.Arbitrary<SystemPart> = uniform(-1, 1.5).map((height) => ({ part: "rise", name: "rise", height }));

/** A bank of branches that climb nowhere. */
const aBank: fc.Arbitrary<SystemPart> = fc
  .array(fc.array(aFrictionPart, { minLength: 1, maxLength: 3 }), { minLength: 2, maxLength: 4 })
  .map((branches) => ({ part: "bank", name: "bank", branches }));

const aPath = (maxLength: number): fc.Arbitrary<SystemPart[]> =>
  fc.array(
    fc.oneof({ weight: 6, arbitrary: aFrictionPart }, { weight: 1, arbitrary: aRise }, { weight: 2, arbitrary: aBank }),
    { minLength: 1, maxLength },
  );

const aPump = (demand: number): fc.Arbitrary<SystemPump> =>
  fc.oneof(
    fc.constant({ kind: "none" as const }),
    {
      weight: 3,
      arbitrary: fc
        .record({
          over: uniform(0.8, 4),
          relief: logUniform(2e4, 3e5),
          reliefTo: fc.constantFrom("inlet", "tank"),
          slip: fc.option(
            fc.record({ share: uniform(0.01, 0.4), rise: logUniform(2e4, 2e5), dynamicViscosity: aDynamicViscosity }),
            {
              nil: undefined,
            },
          ),
        })
        .map(
          ({ over, relief, reliefTo, slip }) =>
            defined({
              kind: "fixed" as const,
              flow: demand * over,
              relief,
              reliefTo,
              slip: slip && {
                flow: demand * over * slip.share,
                rise: slip.rise,
                dynamicViscosity: slip.dynamicViscosity,
              },
            }) as SystemPump,
        ),
    },
    fc.record({ over: uniform(1, 5), rise: logUniform(1e4, 3e5) }).map(({ over, rise }) => ({
      kind: "curve" as const,
      points: [
        { flow: 0, rise },
        { flow: demand * over * 0.6, rise: rise * 0.7 },
        { flow: demand * over, rise: 0 },
      ],
    })),
    fc.record({ over: uniform(1, 5), suction: logUniform(3e3, 4e4) }).map(({ over, suction }) => ({
      kind: "pulse" as const,
      flow: demand * over,
      suction,
    })),
  );

const aTank: fc.Arbitrary<SystemTank> = fc
  .record({
    full: uniform(0.05, 2),
    low: uniform(0, 1),
    vent: fc.oneof(
      { weight: 6, arbitrary: fc.constant({ kind: "open" as const }) },
      logUniform(100, 5000).map((opening) => ({ kind: "spring" as const, opening })),
      fc.constant({ kind: "blocked" as const }),
    ),
    volume: fc.option(logUniform(1e-3, 20), { nil: undefined }),
  })
  .map(
    ({ full, low, ...rest }) =>
      defined({ name: "tank", fullDepth: full, lowDepth: full * low, ...rest, path: [] }) as SystemTank,
  );

const tanksOf: fc.Arbitrary<SystemTank[]> = fc.oneof(
  { weight: 4, arbitrary: aTank.map((tank) => [tank]) },
  fc
    .array(fc.tuple(aTank, fc.array(aFrictionPart, { minLength: 1, maxLength: 2 })), { minLength: 2, maxLength: 3 })
    .map((some) => some.map(([tank, path], at) => ({ ...tank, name: `tank ${at + 1}`, path }))),
);

const aDuty: fc.Arbitrary<SystemDuty> = fc
  .record({
    hoursADay: uniform(0.5, 24),
    daysAYear: fc.integer({ min: 1, max: 366 }),
    loads: fc.option(
      fc
        .array(fc.record({ load: uniform(0.05, 1), share: uniform(0.05, 1) }), { minLength: 1, maxLength: 4 })
        .map(sharesOfOne),
      { nil: undefined },
    ),
    seasons: fc.option(
      fc
        .array(
          fc.record({ name: fc.constant("season"), share: uniform(0.05, 1), temperature: uniform(258.15, 308.15) }),
          {
            minLength: 1,
            maxLength: 4,
          },
        )
        .map(sharesOfOne),
      { nil: undefined },
    ),
    starts: fc.option(fc.constantFrom("2026-03-01", "2027-12-31", "2028-02-29"), { nil: undefined }),
    distance: fc.option(logUniform(1e5, 1e8), { nil: undefined }),
  })
  .map((duty) => defined(duty) as SystemDuty);

const aCode = fc
  .tuple(fc.integer({ min: 12, max: 23 }), fc.integer({ min: 0, max: 3 }), fc.integer({ min: 1, max: 4 }))
  .map(([at4, less6, less14]) => `${at4}/${at4 - less6}/${Math.max(0, at4 - less6 - less14)}`);

/** A system of any kind, with all that `check` and `life` ask of it most of the time. */
export const aSystem: fc.Arbitrary<System> = fc
  .record({
    fuel: aFuel,
    temperature: uniform(253.15, 318.15),
    altitude: fc.oneof(fc.constant(0), uniform(-100, 4000)),
    burn: logUniform(0.3 * L_PER_H, 800 * L_PER_H),
    back: fc.oneof(fc.constant(0), uniform(0, 3)),
  })
  .chain(({ fuel, temperature, altitude, burn, back }) => {
    const demand: SystemDemand = { burn, return: burn * back };
    return fc
      .record({
        tanks: tanksOf,
        suction: aPath(8),
        delivery: fc.option(aPath(4), { nil: undefined, freq: 3 }),
        pump: aPump(burn * (1 + back)),
        limits: fc.record(
          { vacuumClean: uniform(3e3, 2.5e4), vacuumAtChange: uniform(2.5e4, 6e4), feedPressure: uniform(0, 4e4) },
          { requiredKeys: [] },
        ),
        duty: fc.option(aDuty, { nil: undefined, freq: 8 }),
        delivered: fc.option(
          fc.record({
            solids: fc.oneof(
              aCode.map((code) => ({ code })),
              fc.record({
                solids: logUniform(1e-5, 1e-2),
                dust: fc.constantFrom(...(Object.keys(testDusts) as (keyof typeof testDusts)[])),
              }),
            ),
            water: fc.option(logUniform(0.01, 1), { nil: undefined }),
            held: fc.option(fc.constantFrom("delivered fuel", "tank"), { nil: undefined }),
          }),
          { nil: undefined, freq: 8 },
        ),
        interval: fc.option(logUniform(20 * 3600, 2000 * 3600), { nil: undefined, freq: 8 }),
        code: fc.option(aCode, { nil: undefined }),
      })
      .map(({ delivered, interval, code, delivery, pump, ...rest }) => {
        const gravity = pump.kind === "none";
        return named(
          defined({
            format: "thirstline/1" as const,
            name: "A machine",
            fuel,
            temperature,
            altitude,
            demand,
            pump,
            ...rest,
            delivery: gravity ? undefined : delivery,
            deliveredFuel: delivered && defined({ ...delivered.solids, water: delivered.water, held: delivered.held }),
            service: interval === undefined ? undefined : { interval, atMost: interval * 2 },
            protection: code === undefined ? undefined : { code },
          }) as System,
        );
      });
  });

/** No two filters share a name. */
function named(system: System): System {
  let count = 0;
  const name = (parts: readonly SystemPart[]): SystemPart[] =>
    parts.map((part) => {
      if (part.part === "bank") return { ...part, branches: part.branches.map(name) };
      if (part.part !== "filter") return part;
      count += 1;
      return { ...part, name: `filter ${count}` };
    });
  return {
    ...system,
    tanks: system.tanks.map((tank) => ({ ...tank, path: name(tank.path) })),
    suction: name(system.suction),
    ...(system.delivery ? { delivery: name(system.delivery) } : {}),
  };
}

function sharesOfOne<Row extends { readonly share: number }>(rows: readonly Row[]): Row[] {
  const whole = rows.reduce((sum, { share }) => sum + share, 0);
  return rows.map((row) => ({ ...row, share: row.share / whole }));
}

function defined<Given extends object>(given: Given): Partial<Given> {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as Partial<Given>;
}
