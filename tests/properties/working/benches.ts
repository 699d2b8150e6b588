import type {
  System,
  SystemFilter,
  SystemFuel,
  SystemLine,
  SystemMedium,
  SystemPart,
  SystemPump,
} from "@thirstline/spec/system";

// Small machines of what no demonstration has, so that every kind of step is met. All invented.

/** Litres an hour, m3/s. */
const L_H = 1e-3 / 3600;

const line = (name: string, bore: number, length = 1): SystemLine => ({
  part: "line",
  name,
  length,
  bore,
  roughness: 1e-5,
  surface: "rubber hose",
});

const filter = (name: string, medium: SystemMedium, more: Partial<SystemFilter> = {}): SystemFilter => ({
  part: "filter",
  name,
  medium,
  blocked: false,
  reversed: false,
  ...more,
});

const checkValve = (opening: number): SystemPart => ({
  part: "valve",
  name: `valve of ${opening} Pa`,
  kv: 1 / 3600,
  opening,
  oneWay: true,
});

const tested = (drop: number): SystemMedium => ({
  by: "flow test",
  points: [{ drop, flow: 100 * L_H }],
  dynamicViscosity: 2.5e-3,
});

const twice = (slow: number, fast: number): SystemMedium => ({
  by: "flow test",
  points: [
    { drop: slow, flow: 100 * L_H },
    { drop: fast, flow: 200 * L_H },
  ],
  dynamicViscosity: 2.5e-3,
  density: 830,
});

const relieved: SystemPump = { kind: "fixed", flow: 180 * L_H, relief: 60e3, reliefTo: "inlet" };

const plain: System = {
  format: "thirstline/1",
  name: "Bench",
  fuel: { kind: "diesel", grade: "winter" },
  temperature: 288.15,
  altitude: 0,
  demand: { burn: 30 * L_H, return: 20 * L_H },
  tanks: [{ name: "bench tank", fullDepth: 1, lowDepth: 0.2, vent: { kind: "open" }, path: [] }],
  suction: [line("hose", 0.01)],
  pump: relieved,
  limits: { vacuumClean: 13e3, vacuumAtChange: 25e3 },
};

/** A plain machine with something else in its place. */
export function bench(change: Partial<System>): System {
  return { ...plain, ...change };
}

/** One tank, one hose, and every kind of fuel, with and without what a file may state of it. */
export const fuels: Readonly<Record<string, System>> = Object.fromEntries(
  Object.entries<readonly [SystemFuel, number?]>({
    "winter diesel": [{ kind: "diesel", grade: "winter" }],
    "arctic diesel": [{ kind: "diesel", grade: "arctic" }],
    kerosene: [{ kind: "kerosene" }],
    paraffinic: [{ kind: "paraffinic" }],
    biodiesel: [{ kind: "biodiesel", share: 1, feedstock: "soy" }],
    "biodiesel in diesel": [{ kind: "biodiesel", share: 0.2, feedstock: "rapeseed", grade: "summer" }],
    "petrol without ethanol": [{ kind: "petrol", class: "EN 228 A", ethanol: 0 }],
    "petrol with a little ethanol": [{ kind: "petrol", class: "EN 228 A", ethanol: 0.05 }],
    "petrol with as much ethanol as its class takes": [{ kind: "petrol", class: "EN 228 A", ethanol: 0.1 }],
    "petrol with ethanol, waived": [{ kind: "petrol", class: "ASTM D4814 A", ethanol: 0.1 }],
    "petrol with too little ethanol for the waiver": [{ kind: "petrol", class: "ASTM D4814 A", ethanol: 0.05 }],
    "mostly ethanol": [{ kind: "petrol", class: "EN 228 A", ethanol: 0.85 }],
    premix: [{ kind: "premix", ratio: 50, class: "EN 228 A", ethanol: 0 }],
    "heavy at 15 degrees": [
      { kind: "measured", like: "diesel", measured: { density: [{ temperature: 288.15, density: 845 }] } },
    ],
    "heavy at 40 degrees": [
      { kind: "measured", like: "diesel", measured: { density: [{ temperature: 313.15, density: 845 }] } },
    ],
    "kerosene of one measured density": [
      { kind: "measured", like: "kerosene", measured: { density: [{ temperature: 293.15, density: 779 }] } },
    ],
    "as light as jet fuel": [
      { kind: "measured", like: "diesel", measured: { density: [{ temperature: 293.15, density: 820 }] } },
    ],
    "between jet fuel and petrol": [
      { kind: "measured", like: "paraffinic", measured: { density: [{ temperature: 293.15, density: 775 }] } },
    ],
    "light as petrol": [
      {
        kind: "measured",
        like: "petrol",
        measured: { density: [{ temperature: 283.15, density: 731 }], reid: 55e3, cloudPoint: 230 },
      },
    ],
    "measured biodiesel": [
      {
        kind: "measured",
        like: "biodiesel",
        measured: {
          density: [{ temperature: 298.15, density: 879 }],
          viscosity: [{ temperature: 313.15, kinematicViscosity: 4.2e-6 }],
        },
      },
    ],
    // The points not in order, as a file may have them, and the fuel between, below and above them.
    ...Object.fromEntries(
      [298.15, 273.15, 323.15].map((temperature) => [
        `measured at three temperatures, at ${temperature} K`,
        [
          {
            kind: "measured",
            like: "diesel",
            measured: {
              density: [
                { temperature: 303.15, density: 822 },
                { temperature: 283.15, density: 836 },
                { temperature: 313.15, density: 814 },
              ],
              viscosity: [
                { temperature: 313.15, kinematicViscosity: 2.4e-6 },
                { temperature: 283.15, kinematicViscosity: 5.1e-6 },
                { temperature: 303.15, kinematicViscosity: 3.0e-6 },
              ],
              coldFilterPluggingPoint: 250.15,
            },
          },
          temperature,
        ] as const,
      ]),
    ),
  }).map(([name, [fuel, temperature = 288.15]]) => [name, bench({ name, fuel, temperature })]),
);

/** Every law of parts, in a thin fuel that flows turbulent in a narrow line and between the regimes in a wider one. */
export const everyPart = bench({
  name: "Bench, every kind of part",
  fuel: { kind: "kerosene" },
  demand: { burn: 80 * L_H, return: 120 * L_H },
  altitude: 800,
  suction: [
    line("turbulent hose", 0.0085),
    line("hose between the regimes", 0.0115),
    { part: "line", name: "drawn pipe", length: 0.5, bore: 0.03, roughness: 2e-6 },
    { part: "fitting", name: "union", bore: 0.012, count: 2, loss: { by: "k", k: 1.5 } },
    {
      part: "fitting",
      name: "bend",
      bore: 0.012,
      count: 3,
      loss: { by: "equivalent length", bores: 30, roughness: 1e-5 },
    },
    {
      part: "fitting",
      name: "elbow",
      kind: "elbow 90",
      bore: 0.012,
      count: 1,
      loss: { by: "two-K", row: "elbow 90 screwed" },
    },
    { part: "orifice", name: "orifice", diameter: 0.01, dischargeCoefficient: 0.62 },
    { part: "strainer", name: "screen", aperture: 4e-4, wire: 2e-4, area: 1e-3 },
    { part: "valve", name: "valve", kv: 1.5 / 3600, opening: 500, oneWay: true },
    { part: "rise", name: "climb", height: 0.4 },
    filter(
      "pleated",
      { by: "medium", area: 0.4, thickness: 6e-4, permeability: 4e-12, inertia: 2e6 },
      { area: 0.4, pleats: { depth: 0.015, gap: 4e-4, area: 0.4 }, housing: { k: 3, port: 0.012 } },
    ),
    filter("tested twice", twice(900, 2000)),
    filter("tested on a straight line", twice(1000, 2000)),
    filter("tested all but on a straight line", twice(1000, 2000 + 2e-7)),
    filter("tested on a parabola", twice(500, 2000)),
    filter("tested with air", { by: "air test", flow: 5e-4, sampleArea: 1e-3, pressure: 200, area: 0.5 }),
    filter("by its rating", { by: "rating", size: 2e-5, kind: "absolute", area: 0.5, thickness: 5e-4 }),
    filter("by its number", { by: "rating", size: 2e-5, kind: "nominal", area: 0.5, thickness: 5e-4 }),
    filter("by its fibres", { by: "fibre", diameter: 1.5e-5, solidity: 0.1, area: 0.5, thickness: 5e-4 }),
  ],
  pump: { ...relieved, flow: 300 * L_H },
  limits: { vacuumClean: 45e3, vacuumAtChange: 60e3 },
});

/** Banks in a bank, with a side shut off, one held shut by its check valve, and one of several parts. */
export const nested = bench({
  name: "Bench, banks in a bank",
  suction: [
    {
      part: "bank",
      name: "duplex",
      branches: [
        [filter("spare", tested(3e3), { blocked: true, terminalDrop: 9e3 })],
        [{ part: "valve", name: "by-pass", kv: 1 / 3600, opening: 2e4, oneWay: true }],
        [
          filter("left", tested(2e3), { restriction: 3, terminalDrop: 9e3 }),
          {
            part: "bank",
            name: "twin hoses",
            branches: [[line("short hose", 0.008)], [line("long hose", 0.008, 3), line("tail", 0.01)]],
          },
        ],
        [filter("right", tested(3e3), { terminalDrop: 500 })],
      ],
    },
    line("hose", 0.01),
    filter("plugged", tested(1e3), { restriction: 2, terminalDrop: 100 }),
  ],
  pump: { kind: "curve", points: [10, 60, 120].map((flow, at) => ({ flow: flow * L_H, rise: 5e4 - 2e4 * at })) },
  delivery: [
    filter("fine", tested(4e3), { restriction: 1.5, terminalDrop: 2e4, housing: { k: 2, port: 0.01 } }),
    { part: "rise", name: "climb", height: 0.2 },
  ],
  limits: { vacuumAtChange: 25e3, feedPressure: 10e3 },
});

/** A bank of check valves, which are just opening where nothing is asked for; and a screen, which then costs nothing. */
export const idle = bench({
  name: "Bench, check valves side by side",
  suction: [
    {
      part: "bank",
      name: "pair",
      branches: [
        [filter("shut side", tested(1e3), { blocked: true })],
        ...[900, 800].map((opening) => [checkValve(opening), line("hose", 0.008)]),
      ],
    },
    { part: "strainer", name: "screen", aperture: 4e-4, wire: 2e-4, area: 1e-3 },
  ],
});

/** A bank of hoses alike, which stand on the step to turbulent flow together. */
export const twins = bench({
  name: "Bench, twin hoses",
  fuel: { kind: "petrol", class: "EN 228 A", ethanol: 0 },
  suction: [
    {
      part: "bank",
      name: "twins",
      branches: [[line("one", 0.008, 4)], [line("other", 0.008, 4)], [line("third", 0.006, 1)]],
    },
  ],
  tanks: [{ name: "bench tank", fullDepth: 1, lowDepth: 0, vent: { kind: "open" }, path: [] }],
  // Within the step from laminar to turbulent flow at Re 2300.
  limits: { vacuumClean: 190, vacuumAtChange: 210 },
});

/** Three tanks: the first without air, the second so low behind its spring that fuel runs back into it, the third high. */
export const fedBackward = bench({
  name: "Bench, fed backward",
  tanks: [
    { name: "shut tank", fullDepth: 1, lowDepth: 0.5, vent: { kind: "blocked" }, path: [line("dead hose", 0.01)] },
    {
      name: "low tank",
      fullDepth: 1,
      lowDepth: 0.1,
      vent: { kind: "spring", opening: 2e3 },
      path: [filter("its screen", tested(2e3)), line("low hose", 0.008, 2)],
    },
    { name: "high tank", fullDepth: 2, lowDepth: 1.8, vent: { kind: "open" }, path: [line("high hose", 0.008, 2)] },
  ],
  suction: [line("joint hose", 0.01, 2), filter("element", tested(2e3), { restriction: 2 })],
  limits: { vacuumClean: 13e3, vacuumAtChange: 25e3 },
});

/** Two tanks behind check valves, of which the lower gives nothing until much is asked for. */
export const valved = bench({
  name: "Bench, tanks behind check valves",
  tanks: [0.1, 0.4].map((lowDepth, at) => ({
    name: `tank ${at + 1}`,
    fullDepth: 1,
    lowDepth,
    vent: { kind: "open" },
    path: [checkValve(500 + at), line(`hose ${at + 1}`, 0.008)],
  })),
});

const feed: System["delivery"] = [line("feed pipe", 0.008), filter("fine", tested(4e3))];
const slip = { flow: 60 * L_H, rise: 8e4, dynamicViscosity: 2.5e-3 };

/** Every kind of pump and limit. */
export const pumps: Readonly<Record<string, System>> = Object.fromEntries(
  Object.entries<Partial<System>>({
    "slip, relief to the inlet": { pump: { ...relieved, slip }, delivery: feed, limits: { feedPressure: 20e3 } },
    "slip, relief never opens": {
      pump: { ...relieved, flow: 55 * L_H, slip },
      delivery: feed,
      limits: { feedPressure: 5e3 },
    },
    "slip, no delivery": { pump: { ...relieved, slip }, limits: { vacuumClean: 13e3, feedPressure: 20e3 } },
    "slip, relief to the tank": {
      pump: { ...relieved, reliefTo: "tank", slip },
      delivery: feed,
      limits: { vacuumClean: 5e3, vacuumAtChange: 8e3, feedPressure: 20e3 },
    },
    "no slip, relief to the tank, more asked than it moves": {
      pump: { ...relieved, flow: 40 * L_H, reliefTo: "tank" },
      delivery: feed,
    },
    "more asked than it moves": { pump: { ...relieved, flow: 40 * L_H }, delivery: feed },
    "petrol and a curve": {
      fuel: { kind: "petrol", class: "EN 228 A", ethanol: 0 },
      pump: {
        kind: "curve",
        points: [
          { flow: 0, rise: 3e4 },
          { flow: 45 * L_H, rise: 2e4 },
          { flow: 80 * L_H, rise: 0 },
        ],
      },
      limits: { vacuumClean: 4e3, feedPressure: 3e3 },
    },
    "a curve that begins further on": {
      pump: { kind: "curve", points: [60, 120].map((flow) => ({ flow: flow * L_H, rise: 2e4 })) },
      limits: { vacuumAtChange: 9e3 },
    },
    "a curve that ends before": {
      pump: { kind: "curve", points: [10, 40].map((flow) => ({ flow: flow * L_H, rise: 2e4 })) },
      delivery: feed,
      limits: { vacuumAtChange: 9e3 },
    },
    "a pulse pump": {
      pump: { kind: "pulse", flow: 120 * L_H, suction: 2e4 },
      limits: { vacuumClean: 4e3 },
    },
    "no pump": {
      pump: { kind: "none" },
      suction: [{ part: "rise", name: "fall", height: -1 }, line("hose", 0.006)],
      limits: { feedPressure: 2e3, vacuumClean: 0 },
    },
    "no pump, nothing but a fall": {
      pump: { kind: "none" },
      suction: [{ part: "rise", name: "fall", height: -1 }],
      limits: { feedPressure: 2e3 },
    },
    "broken even without flow": {
      suction: [{ part: "rise", name: "climb", height: 3 }, line("hose", 0.01)],
      limits: { vacuumClean: 13e3, vacuumAtChange: 25e3 },
    },
    "one tank open of two": {
      tanks: [{ kind: "blocked" } as const, { kind: "open" } as const].map((vent, at) => ({
        name: `tank ${at + 1}`,
        fullDepth: 1,
        lowDepth: 0.2,
        vent,
        path: [line(`hose ${at + 1}`, 0.008), filter(`screen ${at + 1}`, tested(1e3))],
      })),
    },
    "two tanks shut off": {
      tanks: [1, 2].map((at) => ({
        name: `tank ${at}`,
        fullDepth: 1,
        lowDepth: 0.2,
        vent: { kind: "open" },
        path: [filter(`screen ${at}`, tested(1e3), { blocked: true })],
      })),
    },
    "nothing can pass": { tanks: [{ ...(plain.tanks[0] as System["tanks"][number]), vent: { kind: "blocked" } }] },
  }).map(([name, change]) => [name, bench({ name: `Bench, ${name}`, ...change })]),
);

/** What an element took in a capacity test: soil, kg, and how often its clean resistance it had then. */
const took = (soil: number, ratio: number) => ({
  soil,
  rise: (ratio - 1) * 2e3,
  flow: 100 * L_H,
  dynamicViscosity: 2.5e-3,
  density: 830,
});

const coarse = [
  { size: 4e-6, beta: 1.1 },
  { size: 30e-6, beta: 2 },
];

const TWO_SEASONS: NonNullable<System["duty"]> = {
  hoursADay: 1,
  daysAYear: 10,
  distance: 2e5,
  loads: [
    { load: 0.4, share: 0.75 },
    { load: 1, share: 0.25 },
  ],
  seasons: [
    { name: "warm", share: 0.6, temperature: 293.15 },
    { name: "cold", share: 0.4, temperature: 273.15 },
  ],
};

/** An element that was tested to a load of 5 g at twice its clean resistance, and to one of 10 g. */
const followed = (law: NonNullable<SystemFilter["loadingLaw"]>, ratio: number, lighter = 2): SystemFilter =>
  filter(`by ${law}, ${ratio}`, tested(2e3), {
    betas: coarse,
    loadingLaw: law,
    lighterCapacityTest: took(5e-3, lighter),
    capacityTest: took(1e-2, ratio),
  });

/** Machines whose elements fill within hours, so that their lives are quick to follow. */
export const lives: Readonly<Record<string, System>> = Object.fromEntries(
  Object.entries<Partial<System>>({
    "every law": {
      suction: [
        followed("cake", 3),
        followed("intermediate", 4),
        followed("standard", 5),
        followed("complete", 6),
        followed("cake-complete", 4),
        followed("cake-intermediate", 3.5),
        followed("complete-standard", 8),
        followed("intermediate-standard", 5),
        followed("cake-standard", 4),
        followed("cake-complete", 3),
        filter("soiled", tested(2e3), {
          betas: coarse,
          loadingLaw: "cake-standard",
          lighterCapacityTest: took(5e-3, 2),
          capacityTest: took(1e-2, 4),
          restriction: 1.5,
        }),
      ],
      duty: TWO_SEASONS,
      // The dirty delivery is never taken: the elements end before it.
      deliveredFuel: {
        solids: 0.05,
        dust: "A3 medium",
        dirtyDelivery: { after: 50 * 3600, volume: 0.05, solids: 0.9 },
      },
      limits: { vacuumAtChange: 30e3, vacuumClean: 25e3 },
      service: { interval: 20 * 3600, atMost: 30 * 3600, distance: 1e6 },
    },
    "a dirty delivery, water and two tanks": {
      tanks: [
        {
          name: "shut tank",
          fullDepth: 1,
          lowDepth: 0.3,
          vent: { kind: "blocked" },
          path: [
            filter("shut away", tested(500), {
              betas: coarse,
              capacityTest: took(5e-3, 5),
              separation: { efficiency: 0.5, flow: 100 * L_H },
            }),
          ],
        },
        { name: "near tank", fullDepth: 1, lowDepth: 0.3, vent: { kind: "open" }, path: [line("near hose", 0.008)] },
        {
          name: "far tank",
          fullDepth: 1,
          lowDepth: 0.3,
          vent: { kind: "open" },
          path: [
            line("far hose", 0.008, 3),
            filter("its own", tested(500), {
              betas: coarse,
              capacityTest: took(5e-3, 5),
              separation: { efficiency: 0.5, flow: 100 * L_H },
              bowl: 1e-4,
            }),
          ],
        },
      ],
      suction: [
        {
          part: "bank",
          name: "duplex",
          branches: [
            [filter("left", tested(1e3), { betas: coarse, capacityTest: took(1e-2, 5), restriction: 2 })],
            [filter("right", tested(1e3), { betas: coarse, capacityTest: took(2e-2, 9) })],
            [filter("spare", tested(1e3), { betas: coarse, blocked: true })],
          ],
        },
        filter("absorber", tested(1e3), {
          absorbs: { water: 0.02, rise: 3e3, flow: 100 * L_H, dynamicViscosity: 2.5e-3, density: 830 },
        }),
      ],
      pump: { ...relieved, reliefTo: "tank" },
      delivery: [filter("fine", tested(2e3), { betas: [{ size: 6e-6, beta: 20 }], area: 0.2, make: "cellulose" })],
      duty: { ...TWO_SEASONS, starts: "2026-01-01" },
      deliveredFuel: {
        code: "19/17/14",
        water: 0.3,
        dirtyDelivery: { after: 5 * 3600, volume: 0.02, solids: 0.05, dust: "A2 fine" },
      },
      limits: { vacuumClean: 13e3, vacuumAtChange: 25e3, feedPressure: 10e3 },
      service: {
        interval: 25 * 3600,
        calendar: 3 * 365.25 * 86400,
        last: { date: "2026-03-15", hours: 7e5, distance: 3e7 },
      },
    },
    "held in the tank, counted, with odd betas": {
      fuel: { kind: "biodiesel", share: 0.2, feedstock: "soy", grade: "summer" },
      suction: [
        filter("moved", tested(2e3), {
          betas: [
            { size: 1e-5, beta: 1 },
            { size: 1.2e-5, beta: 1000 },
          ],
          leak: 0.02,
          capacityTest: took(5e-3, 5),
        }),
        filter("rated", tested(2e3), { statedRating: { size: 1e-5, kind: "beta 200" }, area: 0.05 }),
        filter("nominal", tested(2e3), { statedRating: { size: 1e-5, kind: "nominal" }, area: 0.05 }),
        filter("finest", tested(2e3), {
          statedRating: { size: 5e-6, kind: "beta 1000" },
          area: 0.05,
          make: "cellulose",
        }),
        filter("absolute", tested(2e3), { statedRating: { size: 5e-6, kind: "absolute" }, area: 0.05 }),
        filter("beta 75", tested(2e3), { statedRating: { size: 3e-6, kind: "beta 75" }, area: 0.05 }),
        filter("three betas", tested(2e3), {
          betas: [
            { size: 4e-6, beta: 2 },
            { size: 8e-6, beta: 5 },
            { size: 2e-5, beta: 100 },
          ],
          area: 0.05,
        }),
        filter("unknown", tested(2e3)),
        filter("thirsty", tested(500), {
          absorbs: { water: 0.05, restriction: 4 },
        }),
      ],
      duty: { hoursADay: 1, daysAYear: 10 },
      deliveredFuel: { counts: { at4: 40_000, at6: 8000, at14: 300 }, held: "tank", water: 0.2 },
    },
    "nothing large, no loads, cold and long between changes": {
      suction: [
        filter(
          "by its fibres",
          { by: "fibre", diameter: 1.5e-5, solidity: 0.1, area: 0.05, thickness: 5e-4 },
          {
            betas: [{ size: 1e-5, beta: 20 }],
          },
        ),
      ],
      duty: { hoursADay: 1, daysAYear: 3, seasons: [{ name: "arctic", share: 1, temperature: 230 }] },
      fuel: { kind: "diesel", grade: "arctic" },
      deliveredFuel: { counts: { at4: 100, at6: 10 }, water: 0.05 },
      // A distance says nothing of a duty that states none.
      service: { interval: 1e6, distance: 1e6 },
    },
    "broken from the start": {
      suction: [
        { part: "rise", name: "climb", height: 2 },
        filter("element", tested(9e3), { betas: coarse, capacityTest: took(5e-3, 4), terminalDrop: 1e4 }),
      ],
      duty: TWO_SEASONS,
      deliveredFuel: { solids: 0.01, dust: "A4 coarse" },
      limits: { vacuumClean: 10e3, vacuumAtChange: 12e3 },
    },
    "past it at once": {
      suction: [filter("element", tested(2e3), { betas: coarse, capacityTest: took(5e-3, 4), terminalDrop: 5e3 })],
      duty: TWO_SEASONS,
      deliveredFuel: { solids: 0.001, dirtyDelivery: { after: 8 * 3600, volume: 0.05, solids: 0.9 } },
    },
    "plugged at once": {
      suction: [
        filter("element", tested(2e3), {
          betas: [{ size: 4e-6, beta: 75 }],
          capacityTest: took(5e-3, 4),
          loadingLaw: "complete",
        }),
      ],
      duty: { hoursADay: 1, daysAYear: 10 },
      deliveredFuel: { solids: 0.001, dirtyDelivery: { after: 8 * 3600, volume: 0.05, solids: 0.9 } },
    },
    "by gravity, in petrol with ethanol": {
      fuel: { kind: "petrol", class: "EN 228 A", ethanol: 0.05 },
      suction: [
        { part: "rise", name: "fall", height: -1 },
        {
          part: "bank",
          name: "pair",
          branches: [1, 2].map((at) => [
            filter(
              `paper ${at}`,
              { by: "rating", size: 1e-5, kind: "absolute", area: 0.02, thickness: 5e-4 },
              {
                make: "glass or synthetic",
                separation: { efficiency: 0.8, flow: 50 * L_H },
                bowl: 1e-4,
              },
            ),
          ]),
        },
      ],
      pump: { kind: "none" },
      limits: { feedPressure: 2e3 },
      duty: { ...TWO_SEASONS, seasons: [{ name: "all", share: 1, temperature: 288.15 }] },
      deliveredFuel: { solids: 0.05, water: 0.1 },
      service: { interval: 5 * 3600, distance: 3e4, last: { hours: 36e4 } },
    },
  }).map(([name, change]) => [name, bench({ name: `Bench, ${name}`, ...change })]),
);
