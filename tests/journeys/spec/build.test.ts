import { readFileSync } from "node:fs";
import {
  atmosphere,
  type Circuit,
  densityAt,
  filter,
  fitting,
  fuelState,
  fuels,
  line,
  orifice,
  parallel,
  petrolOfClass,
  premix,
  rise,
  series,
  solve,
  strainer,
  twoKConstants,
  valve,
  withBiodiesel,
  withEthanol,
} from "@thirstline/core";
import { build, formatFault, readSystem } from "@thirstline/spec";
import { build as buildAlone, type System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { smallSystem } from "./smallSystem.js";

function systemOf(text: string): System {
  const read = readSystem(text, { file: "x.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(formatFault).join("\n"));
  return read.system;
}

function changed(from: string, to: string): System {
  if (!smallSystem.includes(from)) throw new Error(`no ${from} to change`);
  return systemOf(smallSystem.replace(from, to));
}

test("build(system) is the same from either entry", () => {
  expect(buildAlone).toBe(build);
});

test("build(Heron) is the circuit written out by hand", () => {
  const heron = systemOf(readFileSync(new URL("../../../packages/spec/demo/heron.yaml", import.meta.url), "utf8"));
  const built = build(heron);
  const pre = { clean: { drop: 2e3, flow: 200 / 3.6e6, dynamicViscosity: 3e-6 * 830 } };
  const suction: Circuit = series(
    line({ name: "tank line", length: 6, bore: 0.019, roughness: 1e-5 }),
    fitting({ name: "elbows", bore: 0.019, count: 3, twoK: twoKConstants["elbow 90 screwed"] }),
    rise({ height: 0.9 }),
    parallel(filter({ name: "prefilter A", ...pre }), filter({ name: "prefilter B", ...pre })),
    line({ name: "pump line", length: 2, bore: 0.019, roughness: 1e-5 }),
  );
  const fuel = fuelState(built.fuel, { temperature: 263.15 });
  for (const flow of [1e-5, 9e-5, 1.4e-4]) {
    expect(solve(built.suction, fuel).drop(flow)).toBeCloseTo(solve(suction, fuel).drop(flow), 9);
  }
  expect(built).toMatchObject({
    temperature: 288.15,
    ambientPressure: 101325,
    tanks: [{ name: "port tank", depthFull: 1.1, depthLow: 0.2, vent: { kind: "open" }, path: null }],
    pump: { kind: "fixed", flow: 500 / 3.6e6, slip: null, relief: 80e3, reliefTo: "inlet" },
    limits: { vacuumClean: 20e3, vacuumAtChange: 40e3, feedPressure: 25e3, source: "operator's manual" },
  });
  expect(built.fuel).toMatchObject({ cloudPoint: 257.15 });
});

test("build(system).demand turns power into volume by the density at hand", () => {
  const built = build(changed("burn: 20 L/h", "power: 450 kW, specific consumption: 210 g/kWh"));
  const state = fuelState(built.fuel, { temperature: 263.15 });
  const { burn, return: back } = built.demand(state);
  // 450 kW x 210 g/kWh = 94.5 kg/h, whatever the fuel.
  expect((burn * state.density * 3600) / 94.5).toBeCloseTo(1, 12);
  expect(back * 3.6e6).toBeCloseTo(30, 12);
  expect(build(systemOf(smallSystem)).demand(state).burn * 3.6e6).toBeCloseTo(20, 12);
});

test("build(system).ambientPressure is the standard atmosphere at the altitude", () => {
  expect(build(changed("altitude: 0 m", "altitude: 2400 m")).ambientPressure).toBe(atmosphere(2400, "geometric"));
});

describe("build(system).fuel", () => {
  test.each([
    ["kind: diesel, grade: summer", fuels.dieselSummer],
    ["kind: diesel, grade: winter", fuels.dieselWinter],
    ["kind: diesel, grade: arctic", fuels.dieselArctic],
    ["kind: kerosene", fuels.kerosene],
    ["kind: paraffinic", fuels.paraffinic],
    ["kind: biodiesel, share: 100 %", fuels.biodieselSoy],
    ["kind: biodiesel, share: 20 %, grade: winter", withBiodiesel(fuels.dieselWinter, 0.2)],
    [
      "kind: biodiesel, share: 0.3, grade: summer, feedstock: rapeseed",
      withBiodiesel(fuels.dieselSummer, 0.3, fuels.biodieselRapeseed),
    ],
    ["kind: petrol, class: EN 228 D1, ethanol: 5 %", petrolOfClass({ standard: "EN 228", class: "D1", ethanol: 0.05 })],
    ["kind: petrol, class: D4814 C", petrolOfClass({ standard: "ASTM D4814", class: "C" })],
    [
      "kind: petrol, class: EN 228 A, ethanol: 85 %",
      withEthanol(petrolOfClass({ standard: "EN 228", class: "A" }), 0.85),
    ],
    ["kind: premix, ratio: 50:1, class: EN 228 A", premix(petrolOfClass({ standard: "EN 228", class: "A" }), 50)],
  ])("%s", (content, fuel) => {
    expect(build(changed("kind: diesel, grade: winter", content)).fuel).toEqual(fuel);
  });

  test.each(["diesel", "biodiesel", "paraffinic", "kerosene", "petrol"])("measured, like %s", (like) => {
    const points = "viscosity: [{ at: 20 degC, is: 4 mm2/s }, { at: 40 degC, is: 2.6 mm2/s }]";
    const content = `kind: measured, like: ${like}, density: 812 kg/m3, ${points}`;
    const { fuel } = build(changed("kind: diesel, grade: winter", content));
    expect(densityAt(fuel.density, 288.15)).toBeCloseTo(812, 9);
    expect(fuelState(fuel, { temperature: 313.15 }).kinematicViscosity).toBeCloseTo(2.6e-6, 15);
    expect(fuel.status).toBe("measured");
  });
});

describe("build(system).suction", () => {
  const fuel = fuelState(fuels.dieselWinter, { temperature: 288.15 });
  const medium = { area: 0.5, thickness: 6e-4, permeability: 2e-13 };
  const ofMedium = "medium: { area: 0.5 m2, thickness: 0.6 mm, permeability: 2e-13 m2 }";
  const rating = { size: 1e-5, kind: "nominal", area: 0.5, thickness: 6e-4 } as const;
  const pair = [
    { drop: 2e3, flow: 1e-4 },
    { drop: 5e3, flow: 2e-4 },
  ] as const;

  test.each<[string, Circuit]>([
    ["rise: 0.9 m", rise({ height: 0.9 })],
    ["fitting: { k: 1.5, bore: 10 mm, count: 2 }", fitting({ k: 1.5, bore: 0.01, count: 2 })],
    [
      "fitting: { equivalent length: 30, bore: 10 mm, surface: steel }",
      fitting({ equivalentLength: 30, bore: 0.01, roughness: 4.6e-5 }),
    ],
    ["valve: { kv: 3.6 m3/h, opening: 2 kPa }", valve({ kv: 1e-3, opening: 2e3 })],
    ["valve: { kv: 3.6 m3/h, one-way: false }", valve({ kv: 1e-3, oneWay: false })],
    [
      "orifice: { diameter: 2 mm, discharge coefficient: 0.61 }",
      orifice({ diameter: 0.002, dischargeCoefficient: 0.61 }),
    ],
    [
      "strainer: { aperture: 425 um, wire: 280 um, area: 20 cm2 }",
      strainer({ aperture: 425e-6, wire: 280e-6, area: 2e-3 }),
    ],
    [`filter: { ${ofMedium} }`, filter({ media: medium })],
    [
      `filter: { ${ofMedium}, housing: { k: 4, port: 12 mm }, restriction: 1.8, pleats: { depth: 15 mm, gap: 0.5 mm } }`,
      filter({
        media: medium,
        housing: { k: 4, port: 0.012 },
        restriction: 1.8,
        pleats: { depth: 0.015, gap: 5e-4, area: 0.5 },
      }),
    ],
    [
      "filter: { area: 0.5 m2, air test: { flow: 6 L/min, area: 10 cm2, pressure: 200 Pa } }",
      filter({ airTest: { flow: 1e-4, sampleArea: 1e-3, pressure: 200, area: 0.5 } }),
    ],
    ["filter: { rating: { size: 10 um, kind: nominal, area: 0.5 m2, thickness: 0.6 mm } }", filter({ rating })],
    [
      "filter: { fibre: { diameter: 5 um, solidity: 0.1, area: 0.5 m2, thickness: 0.6 mm } }",
      filter({ fibre: { diameter: 5e-6, solidity: 0.1, area: 0.5, thickness: 6e-4 } }),
    ],
    [
      "filter: { flow test: [{ drop: 2 kPa, flow: 360 L/h, viscosity: 2.4 mPa s, density: 800 kg/m3 }, { drop: 5 kPa, flow: 720 L/h, viscosity: 2.4 mPa s, density: 800 kg/m3 }] }",
      filter({ test: { points: pair, density: 800, dynamicViscosity: 2.4e-3 } }),
    ],
    [
      `bank: [filter: { name: A, ${ofMedium} }, filter: { name: B, ${ofMedium}, blocked: true }]`,
      filter({ media: medium }),
    ],
  ])("%s", (part, circuit) => {
    const text = smallSystem.replace(/suction:\n[\s\S]*(?=pump:)/, `suction:\n  - ${part}\n`);
    const { suction } = build(systemOf(text));
    for (const flow of [1e-5, 1.2e-4]) {
      const drop = solve(suction, fuel).drop(flow);
      expect(drop / solve(circuit, fuel).drop(flow)).toBeCloseTo(1, 12);
    }
  });

  test("a filter fitted backwards says so", () => {
    const { suction } = build(changed("name: prefilter,", "name: prefilter, reversed: true,"));
    expect(suction.kind === "series" && suction.items[1]).toMatchObject({
      kind: "filter",
      name: "prefilter",
      reversed: true,
    });
  });
});

test("build(system of several tanks) gives each its path", () => {
  const path = "path: [line: { name: riser, length: 1 m, bore: 9 mm, surface: steel }]";
  const built = build(
    changed(
      "tank: { full depth: 0.5 m, low depth: 0.1 m, vent: open }",
      `tanks: [{ name: left, full depth: 1 m, low depth: 0.1 m, vent: open, ${path} }, { name: right, full depth: 1 m, low depth: 0.2 m, vent: 2 kPa, ${path} }]`,
    ),
  );
  expect(built.tanks.map(({ name, depthLow, vent, path: own }) => [name, depthLow, vent.kind, own?.kind])).toEqual([
    ["left", 0.1, "open", "series"],
    ["right", 0.2, "spring", "series"],
  ]);
});

test("build(system) of no delivery has none", () => {
  expect(build(systemOf(smallSystem)).delivery).toBeNull();
});

test("figures that are sensible one by one and impossible together are one fault of the file", () => {
  // Two points so close that their line gives no fluid at the fuel's temperature.
  const points = "viscosity: [{ at: 20 degC, is: 1900 mm2/s }, { at: 21 degC, is: 1 mm2/s }]";
  const read = readSystem(smallSystem.replace("grade: winter", `grade: winter, ${points}`), { file: "x.yaml" });
  expect("faults" in read && read.faults.map(({ line, path, code }) => ({ line, path, code }))).toEqual([
    { line: 3, path: "fuel", code: "impossible together" },
  ]);
});
