import {
  ceilings,
  filter,
  fuelState,
  line,
  marginsOf,
  type Pump,
  parallel,
  pump,
  rise,
  type Supply,
  SupplyModel,
  series,
  tank,
} from "@thirstline/core";
import { expect, test } from "vitest";

const diesel = fuelState({ density: 830, kinematicViscosity: 3e-6, vapourPressure: 100 });
const petrol = fuelState({ density: 740, kinematicViscosity: 6e-7, vapourPressure: 40e3 });
const hose = line({ length: 4, bore: 0.006, roughness: 1e-6 });
const fine = filter({ clean: { drop: 12e3, flow: 1e-4, dynamicViscosity: 830 * 3e-6 } });
const limits = { vacuumClean: 10e3, vacuumAtChange: 30e3, feedPressure: 25e3 };
const slip = { flow: 2e-5, rise: 1e5, dynamicViscosity: 830 * 3e-6 };
const curve = (...points: [number, number][]): Pump =>
  pump({ kind: "curve", points: points.map(([flow, rise]) => ({ flow, rise })) });
const plain: Supply = {
  ambientPressure: 101325,
  tanks: [tank({ depth: 0.2 })],
  suction: hose,
  pump: { kind: "none" },
  delivery: fine,
};
const fixed = { kind: "fixed", flow: 2e-4, slip: null, relief: 80e3, reliefTo: "inlet" } as const;

const supplies: [string, Partial<Supply>][] = [
  ["no pump, fed from 6 m above", { tanks: [tank({ depth: 6 })] }],
  ["a pump whose rise is spent between its points", { pump: curve([0, 60e3], [1e-4, 50e3], [3e-4, 0]) }],
  ["a pump whose rise is spent on its second stretch", { pump: curve([0, 60e3], [2e-5, 58e3], [3e-4, 0]) }],
  ["a pump whose rise is spent before its first point", { pump: curve([3e-4, 32e3], [4e-4, 0]) }],
  ["a pump whose rise is spent beyond its last point", { pump: curve([1e-6, 60e3], [1e-5, 55e3], [2e-5, 50e3]) }],
  ["a pulse pump", { pump: pump({ kind: "pulse", flow: 1e-4, suction: 20e3 }) }],
  ["a fixed pump", { pump: pump(fixed) }],
  ["a fixed pump that slips less than its relief lets back", { pump: pump({ ...fixed, slip }) }],
  ["a fixed pump that slips against little relief", { pump: pump({ ...fixed, slip, relief: 40e3 }), delivery: null }],
  ["a hump in its suction", { suction: series(hose, rise({ height: 3 }), rise({ height: -3 })), pump: pump(fixed) }],
];

test.each(supplies)(
  "ceilings(supply with %s, …) are the largest demands at which each margin still holds",
  (_, given) => {
    for (const fuel of [diesel, petrol]) {
      const supply = { ...plain, ...given };
      const margins = (["smooth", "early"] as const).map((passage) =>
        marginsOf(new SupplyModel(supply, { fuel, passage, end: "middle" }), limits),
      );
      const found = ceilings(supply, fuel, limits, 5e-5, "middle");
      expect(found.map(({ limit }) => limit)).toEqual([...(margins[0]?.keys() ?? [])]);
      for (const { limit, flow, inHand } of found) {
        const margin = (at: number) => Math.min(...margins.map((of) => of.get(limit)?.(at) ?? Number.NaN));
        expect(inHand).toBeCloseTo(flow / 5e-5 - 1, 12);
        expect(margin(flow * (1 - 1e-7)), limit).toBeGreaterThanOrEqual(0);
        expect(margin(flow * (1 + 1e-7)), limit).toBeLessThan(0);
      }
    }
  },
);

test("ceilings(supply without resistance, …) are boundless, and 0 where not even no flow is allowed", () => {
  const free = { ...plain, suction: rise({ height: 1 }), delivery: null, pump: pump(fixed) };
  const flows = (vacuumClean: number) =>
    new Map(ceilings(free, diesel, { vacuumClean }, 5e-5, "middle").map(({ limit, flow }) => [limit, flow]));
  // 0.8 m of fuel is 6511.6 Pa.
  expect(flows(6512).get("vacuum clean")).toBe(Infinity);
  expect(flows(6511).get("vacuum clean")).toBe(0);
  expect(flows(6512).get("vapour")).toBe(Infinity);
  expect(flows(6512).get("feed pressure")).toBe(Infinity);
});

test("ceilings(supply relieved to the tank, …) read what is in hand in the suction off the pump's own flow", () => {
  const suction = line({ length: 4, bore: 0.01, roughness: 1e-6 });
  const toInlet = { ...plain, suction, pump: pump(fixed) };
  const toTank = { ...toInlet, pump: pump({ ...fixed, reliefTo: "tank" }) };
  const atChange = (supply: Supply, vacuumAtChange: number, demand: number) =>
    ceilings(supply, diesel, { vacuumAtChange }, demand, "middle").find(({ limit }) => limit === "vacuum at change");
  const flow = atChange(toInlet, 40e3, 5e-5)?.flow ?? 0;
  expect(flow).toBeGreaterThan(2e-4);
  expect(atChange(toTank, 40e3, 5e-5)).toEqual({ limit: "vacuum at change", flow, inHand: flow / 2e-4 - 1 });
  // A demand beyond the pump's own flow is the nearer one.
  expect(atChange(toTank, 40e3, 2.1e-4)?.inHand).toBeCloseTo(flow / 2.1e-4 - 1, 12);
  // What the pump moves by itself is over a tighter limit: no demand is small enough.
  const tight = atChange(toInlet, 10e3, 5e-5)?.flow ?? 0;
  expect(tight).toBeLessThan(2e-4);
  expect(atChange(toTank, 10e3, 5e-5)).toEqual({ limit: "vacuum at change", flow: 0, inHand: tight / 2e-4 - 1 });
});

test("ceilings(supply relieved to the tank, …) of pump and feed are what it moves and delivers against its relief", () => {
  const toTank = { ...plain, suction: series(), pump: pump({ ...fixed, slip, reliefTo: "tank" }) };
  const found = new Map(
    ceilings(toTank, diesel, { feedPressure: 25e3 }, 5e-5, "middle").map((one) => [one.limit, one]),
  );
  // 12 kPa at 1e-4 m3/s, so 55 kPa at 4.583e-4; slip 2e-10 against what feeds 25 kPa at the flow asked, less 0.2 m of head.
  expect(found.get("feed pressure")?.flow).toBeCloseTo((55e3 / 12e3) * 1e-4, 14);
  const asked = (2e-4 - 2e-10 * (25e3 - 1627.9039)) / (1 + 2e-10 * 1.2e8);
  expect(found.get("pump capacity")?.flow).toBeCloseTo(asked, 12);
});

test("ceilings(supply, …) are the worse of the two passages where a line in a bank leaves laminar flow", () => {
  const wide = line({ length: 6, bore: 0.01, roughness: 1e-6 });
  const supply = { ...plain, suction: parallel(wide, series(wide, wide)), pump: pump(fixed), delivery: null };
  const [clean] = ceilings(supply, diesel, { vacuumClean: 3500 }, 5e-5, "middle");
  const flows = (["smooth", "early"] as const).map((passage) => {
    const model = new SupplyModel(supply, { fuel: diesel, passage, end: "middle" });
    const margin = marginsOf(model, { vacuumClean: 3500 }).get("vacuum clean");
    return [0.999999, 1.000001].map((share) => (margin?.(share * (clean?.flow ?? 0)) ?? 0) >= 0);
  });
  expect(flows).toEqual([
    [true, true],
    [true, false],
  ]);
});
