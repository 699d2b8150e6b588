import type { CatalogueElement, System, SystemFilter } from "@thirstline/spec/system";

/** The fuel temperature at which the plain system's fuel was measured, K. */
export const WARM = 288.15;

/** L/h, in m3/s. */
export const litresAnHour = 1e-3 / 3600;

/** Dynamic viscosity of the plain system's fuel at `WARM`, Pa s. */
export const viscosity = 830 * 3e-6;

/**
 * A pump that lifts 200 L/h by a metre through one element and nothing else, in round figures: 830 kg/m3 and 3 mm2/s, no
 * head in the tank, so the metre costs 830 x 9.80665 Pa and an element what its flow test says.
 */
export const plainSystem: System = {
  format: "thirstline/1",
  name: "plain",
  fuel: {
    kind: "measured",
    like: "diesel",
    measured: {
      viscosity: [{ temperature: WARM, kinematicViscosity: 3e-6 }],
      density: [{ temperature: WARM, density: 830 }],
      cloudPoint: 253.15,
    },
  },
  temperature: WARM,
  altitude: 0,
  demand: { burn: 200 * litresAnHour, return: 0 },
  tanks: [{ name: "tank", fullDepth: 1, lowDepth: 0, vent: { kind: "open" }, path: [] }],
  suction: [{ part: "rise", name: "lift", height: 1 }, elementOf("fitted", { drop: 1e3 }).filter],
  pump: { kind: "fixed", flow: 400 * litresAnHour, relief: 80e3, reliefTo: "inlet" },
  limits: { vacuumClean: 15e3, vacuumAtChange: 30e3 },
  protection: { code: "20/18/15" },
  duty: { hoursADay: 4, daysAYear: 250 },
  deliveredFuel: { solids: 0.01, dust: "A3 medium" },
  service: { interval: 100 * 3600 },
};

/**
 * An element of this drop, Pa, at 200 L/h of the plain fuel. It catches practically all, into a cake: its drop grows in step
 * with the soil, by 12 kPa for 600 g.
 */
export function elementOf(
  name: string,
  {
    drop,
    ...more
  }: { readonly drop: number } & Partial<Omit<CatalogueElement, "filter">> & {
      readonly filter?: Partial<SystemFilter>;
    },
): CatalogueElement {
  const { filter, ...element } = more;
  const flow = 200 * litresAnHour;
  const fluid = { dynamicViscosity: viscosity, density: 830 };
  return {
    name,
    spreads: [],
    ...element,
    filter: {
      part: "filter",
      name,
      medium: { by: "flow test", points: [{ drop, flow }], ...fluid },
      blocked: false,
      reversed: false,
      betas: [
        { size: 1e-6, beta: 1000 },
        { size: 2e-6, beta: 1000 },
      ],
      capacityTest: { soil: 0.6, rise: 12e3, flow, ...fluid },
      loadingLaw: "cake",
      ...filter,
    },
  };
}
