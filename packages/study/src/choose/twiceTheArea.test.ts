import { fuelState, solve } from "@thirstline/core";
import { build, type SystemFilter } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { elementOf, litresAnHour, plainSystem, viscosity, WARM } from "../../../../tests/support/plainSystem.js";
import { twiceTheArea } from "./twiceTheArea.js";

const plain = elementOf("plain", { drop: 3e3 }).filter;
const { capacityTest: _, ...untested } = plain;
const fluid = { dynamicViscosity: viscosity, density: 830 };
const flow = 200 * litresAnHour;

/** What an element costs at a flow, Pa. */
function dropOf(filter: SystemFilter, at: number): number {
  const { suction, fuel } = build({ ...plainSystem, suction: [filter] });
  return solve(suction, fuelState(fuel, { temperature: WARM })).drop(at);
}

test("twiceTheArea(filter) costs half at any flow, where all of the drop is the medium's", () => {
  const twice = twiceTheArea(plain);
  expect(twice.medium).toEqual({ by: "flow test", points: [{ drop: 1.5e3, flow }], ...fluid });
  for (const at of [flow, flow / 7]) expect(dropOf(twice, at)).toBeCloseTo(dropOf(plain, at) / 2, 9);
});

test("twiceTheArea(filter) halves what grows with the flow, and leaves what grows with its square to the body", () => {
  // 3 kPa at 200 L/h and 8 at 400: 2 and 4 kPa are the medium's, 1 and 4 the body's.
  const points = [
    { drop: 3e3, flow },
    { drop: 8e3, flow: 2 * flow },
  ];
  const { medium } = twiceTheArea({ ...plain, medium: { by: "flow test", points, ...fluid } });
  expect(medium).toEqual({
    by: "flow test",
    points: [
      { drop: expect.closeTo(2e3, 6), flow },
      { drop: expect.closeTo(6e3, 6), flow: 2 * flow },
    ],
    ...fluid,
  });
});

test.each<SystemFilter["medium"]>([
  { by: "medium", area: 0.5, thickness: 1e-3, permeability: 1e-12 },
  { by: "air test", flow: 1e-4, sampleArea: 1e-3, pressure: 200, area: 0.5 },
  { by: "rating", size: 10e-6, kind: "nominal", area: 0.5, thickness: 6e-4 },
  { by: "fibre", diameter: 2e-6, solidity: 0.1, area: 0.5, thickness: 1e-3 },
])("twiceTheArea(filter) doubles the area of a medium known by $by, and nothing else of it", (medium) => {
  const filter = { ...untested, medium };
  expect(twiceTheArea(filter)).toEqual({ ...filter, medium: { ...medium, area: 1 } });
  if (medium.by === "medium") expect(dropOf(twiceTheArea(filter), flow)).toBeCloseTo(dropOf(filter, flow) / 2, 6);
});

test("twiceTheArea(filter) has twice the area and pleats that are stated, and takes twice the soil at twice the flow", () => {
  const test = { soil: 0.1, rise: 20e3, flow, ...fluid };
  const lighter = { soil: 0.04, rise: 10e3, flow: flow / 2, ...fluid };
  const pleats = { depth: 0.02, gap: 1e-3, area: 0.6 };
  const twice = twiceTheArea({ ...plain, area: 0.6, pleats, capacityTest: test, lighterCapacityTest: lighter });
  expect(twice).toEqual({
    ...plain,
    medium: expect.anything(),
    area: 1.2,
    pleats: { depth: 0.02, gap: 1e-3, area: 1.2 },
    capacityTest: { soil: 0.2, rise: 20e3, flow: 2 * flow, ...fluid },
    lighterCapacityTest: { soil: 0.08, rise: 10e3, flow, ...fluid },
  });
});

test("twiceTheArea(filter) makes up nothing that is not stated, nor a flow test without points", () => {
  const medium = { by: "flow test", points: [], ...fluid } as const;
  expect(twiceTheArea({ ...untested, medium })).toEqual({ ...untested, medium });
  expect(Object.keys(twiceTheArea(untested)).sort()).toEqual(Object.keys(untested).sort());
});
