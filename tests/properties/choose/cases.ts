import type { System } from "@thirstline/spec/system";
import { expect } from "vitest";
import { seeded } from "../../support/random.js";
import { anElement, demoSystem, sized, triedAll } from "./arrangements.js";

// Machines of every kind with random catalogues: cases for comparing `size` with every arrangement judged one by one.

const HOUR = 3600;
export const heron = demoSystem("heron");
const toTank: System = {
  ...heron,
  name: "relief to the tank",
  pump: { kind: "fixed", flow: 500e-3 / 3600, relief: 120e3, reliefTo: "tank" },
};
const byCurve: System = {
  ...heron,
  name: "pump by its curve",
  pump: {
    kind: "curve",
    points: [
      { flow: 0, rise: 90e3 },
      { flow: 500e-3 / 3600, rise: 60e3 },
    ],
  },
};
const slipping: System = {
  ...heron,
  name: "slip, relief to the inlet",
  pump: {
    kind: "fixed",
    flow: 480e-3 / 3600,
    relief: 80e3,
    reliefTo: "inlet",
    slip: { flow: 60e-3 / 3600, rise: 60e3, dynamicViscosity: 2.5e-3 },
  },
};
const slippingToTank: System = {
  ...heron,
  name: "slip, relief to the tank",
  pump: {
    kind: "fixed",
    flow: 480e-3 / 3600,
    relief: 120e3,
    reliefTo: "tank",
    slip: { flow: 60e-3 / 3600, rise: 100e3, dynamicViscosity: 2.5e-3 },
  },
};
const leaking: System = {
  ...slippingToTank,
  name: "worn, relief to the tank",
  pump: {
    ...slippingToTank.pump,
    slip: { flow: 200e-3 / 3600, rise: 100e3, dynamicViscosity: 2.5e-3 },
  } as System["pump"],
};
const gravity = demoSystem("generator");
const twoTanks = demoSystem("lorry");
const crane: System = { ...demoSystem("crane"), limits: { vacuumClean: 22e3, vacuumAtChange: 40e3 } };
const boat: System = { ...demoSystem("workboat"), limits: { vacuumClean: 8e3, vacuumAtChange: 14e3 } };
const noClean: System = { ...heron, limits: { vacuumAtChange: 30e3, vacuumClean: 30e3, feedPressure: 5e3 } };
const smallPump: System = { ...heron, pump: { ...slipping.pump, flow: 430e-3 / 3600 } as System["pump"] };
export const systems = [
  heron,
  noClean,
  toTank,
  byCurve,
  slipping,
  gravity,
  twoTanks,
  smallPump,
  boat,
  slippingToTank,
  leaking,
];

/** Two temperatures within 5 K, so that the range between them is those two. */
function twoOf(system: System): number[] {
  return [system.temperature - 4, system.temperature];
}

/** One random catalogue with random wishes. */
function aCase(seed: number, sizes: { readonly elements: number; readonly parallel: number; readonly stages: number }) {
  const random = seeded(seed);
  const system = seed % 50 === 49 ? crane : (systems[seed % systems.length] as System);
  const elements = Array.from({ length: sizes.elements }, (_, at) => anElement(random, `E${at}`));
  const wide = random() < 0.3;
  const code = ["15/13/10", "17/15/12", "13/11/5", "20/18/15"][Math.floor(random() * 4)] as string;
  const given = {
    parallel: sizes.parallel,
    stages: sizes.stages,
    temperatures: twoOf(system),
    interval: (20 + 480 * random()) * HOUR,
    code,
  };
  const bores = wide ? [0.012, 0.019] : [];
  return { system: { ...system, service: { interval: 1e9 } }, elements, given, bores };
}

/** A random catalogue sized, and every arrangement of it judged one by one: how many, and what they fail by. */
export function compare(
  seed: number,
  sizes: Parameters<typeof aCase>[1],
): { tried: number; passing: number; by: string[] } {
  const { system, elements, given, bores } = aCase(seed, sizes);
  const answer = sized(system, elements, { ...given, bores, keep: 100_000 });
  const all = triedAll(system, elements, { ...given, bores: bores.length === 0 ? [null] : bores });
  const named = answer.arrangements.map(({ stages, bore }) => {
    const name = stages.map(({ element, count }) => `${element} x${count}`).join(", ");
    return bore === null ? name : `${name}, bore ${bore}`;
  });
  const counts = new Map<string, number>();
  for (const { by } of all) if (by) counts.set(by, (counts.get(by) ?? 0) + 1);
  const where = `seed ${seed}, ${system.name}`;
  expect(answer.candidates, where).toBe(all.length);
  expect(named.sort(), where).toEqual(all.flatMap(({ name, by }) => (by ? [] : [name])).sort());
  expect(Object.fromEntries(answer.failed.map(({ by, count }) => [by, count])), where).toEqual(
    Object.fromEntries(counts),
  );
  return { tried: all.length, passing: named.length, by: [...counts.keys()] };
}
