import { readFileSync } from "node:fs";
import { formatFault, readSystem, type System } from "@thirstline/spec";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { smallSystem } from "./smallSystem.js";

function systemOf(given: string | Uint8Array): System {
  const read = readSystem(given, { file: "x.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(formatFault).join("\n"));
  return read.system;
}

function cautionsOf(given: string): string[] {
  const read = readSystem(given, { file: "x.yaml" });
  return "faults" in read ? [] : read.cautions.map(({ path, message }) => `${path}: ${message}`);
}

/** The small system with one text put for another, which must be there. */
function changed(from: string, to: string): string {
  if (!smallSystem.includes(from)) throw new Error(`no ${from} to change`);
  return smallSystem.replace(from, to);
}

function firstPart(part: string): unknown {
  return systemOf(changed("suction:\n", `suction:\n  - ${part}\n`)).suction[0];
}

function secondFilter(content: string): unknown {
  return systemOf(changed("pump:", `  - filter: { name: second, ${content} }\npump:`)).suction[2];
}

test("readSystem(small system) is the system in SI", () => {
  expect(systemOf(smallSystem)).toEqual({
    format: "thirstline/1",
    name: "test machine",
    fuel: { kind: "diesel", grade: "winter" },
    temperature: 288.15,
    altitude: 0,
    demand: { burn: 20e-3 / 3600, return: 30e-3 / 3600 },
    tanks: [{ name: "tank", fullDepth: 0.5, lowDepth: 0.1, vent: { kind: "open" }, path: [] }],
    suction: [
      { part: "line", name: "line", length: 3, bore: 0.01, roughness: 1e-5, surface: "rubber hose" },
      {
        part: "filter",
        name: "prefilter",
        medium: { by: "flow test", points: [{ drop: 2000, flow: 0.1 / 3600 }], dynamicViscosity: 2.5e-3 },
        blocked: false,
        reversed: false,
      },
    ],
    pump: { kind: "fixed", flow: 0.12 / 3600, relief: 60e3, reliefTo: "inlet" },
    limits: { vacuumClean: 20e3, vacuumAtChange: 40e3 },
  });
});

describe.each(["heron", "heron-finer"])("the demonstration file %s", (name) => {
  const text = readFileSync(new URL(`../../../packages/spec/demo/${name}.yaml`, import.meta.url), "utf8");

  test("reads without a caution, and is plain data", () => {
    const read = readSystem(text, { file: `${name}.yaml` });
    expect(read).toMatchObject({ cautions: [] });
    const system = systemOf(text);
    expect(JSON.parse(JSON.stringify(system))).toEqual(system);
  });

  test("reads the same as JSON, with tabs, from bytes and after a byte order mark", () => {
    const system = systemOf(text);
    const json = JSON.stringify(parse(text, { merge: true }), null, "\t");
    // JSON has no anchors: there every copy is an unknown of its own.
    const spreads = system.spreads?.map(({ path, low, high }) => ({ path, low, high }));
    expect(systemOf(json)).toEqual({ ...system, spreads });
    expect(systemOf(new TextEncoder().encode(text))).toEqual(system);
    expect(systemOf(new TextEncoder().encode(`\ufeff${text}`))).toEqual(system);
    expect(systemOf(text.replaceAll("\n", "\r\n"))).toEqual(system);
  });
});

test("the finer demonstration differs from the first by its name and its prefilter's test and betas only", () => {
  const read = (name: string) =>
    systemOf(readFileSync(new URL(`../../../packages/spec/demo/${name}.yaml`, import.meta.url), "utf8"));
  const [first, finer] = [read("heron"), read("heron-finer")];
  const own = (system: System) =>
    JSON.stringify({ ...system, name: "" }, (key, value) => (key === "medium" || key === "betas" ? key : value));
  expect(own(finer)).toBe(own(first));
  const bankOf = (system: System) => system.suction.flatMap((part) => (part.part === "bank" ? part.branches : []));
  const drops = (system: System) =>
    bankOf(system).flatMap(([part]) =>
      part?.part === "filter" && part.medium.by === "flow test" ? part.medium.points.map(({ drop }) => drop) : [],
    );
  expect(drops(first)).toEqual([2e3, 2e3]);
  expect(drops(finer)).toEqual([16e3, 16e3]);
});

describe("parts", () => {
  test("a line by its roughness", () => {
    const line = { part: "line", name: "line 1", length: 1, bore: 0.0079375, roughness: 2e-6 };
    expect(firstPart("line: { length: 1 m, bore: 5/16 in, roughness: 2 um }")).toEqual(line);
  });

  test.each([
    ["kind: elbow 90, count: 3", 3, { by: "two-K", row: "elbow 90 screwed" }],
    ["kind: tee branch", 1, { by: "two-K", row: "tee as elbow screwed" }],
    ["kind: gate valve", 1, { by: "two-K", row: "ball or gate full bore" }],
    ["k: 1.5", 1, { by: "k", k: 1.5 }],
    ["equivalent length: 30, surface: steel", 1, { by: "equivalent length", bores: 30, roughness: 4.6e-5 }],
  ])("a fitting by %s", (content, count, loss) => {
    expect(firstPart(`fitting: { bore: 10 mm, ${content} }`)).toMatchObject({
      part: "fitting",
      bore: 0.01,
      count,
      loss,
    });
  });

  test("a rise, short and long", () => {
    expect(firstPart("rise: 90 cm")).toEqual({ part: "rise", name: "rise", height: 0.9 });
    expect(firstPart("rise: { height: -0.9 m, name: down }")).toEqual({ part: "rise", name: "down", height: -0.9 });
  });

  test("a valve, one-way unless it says otherwise", () => {
    expect(firstPart("valve: { kv: 3.6 m3/h, opening: 2 kPa }")).toEqual({
      part: "valve",
      name: "valve",
      kv: 1e-3,
      opening: 2000,
      oneWay: true,
    });
    expect(firstPart("valve: { kv: 3.6 m3/h, one-way: false }")).toMatchObject({ opening: 0, oneWay: false });
  });

  test("an orifice and a strainer", () => {
    expect(firstPart("orifice: { diameter: 2 mm, discharge coefficient: 0.61 }")).toEqual({
      part: "orifice",
      name: "orifice",
      diameter: 0.002,
      dischargeCoefficient: 0.61,
    });
    expect(firstPart("strainer: { aperture: 425 um, wire: 280 um, area: 20 cm2 }")).toEqual({
      part: "strainer",
      name: "strainer",
      aperture: 425e-6,
      wire: 280e-6,
      area: 2e-3,
    });
  });

  test("a bank of a part, a list and another bank, rises equal", () => {
    const medium = "medium: { area: 0.5 m2, thickness: 0.6 mm, permeability: 2e-13 m2 }";
    const bank = firstPart(`bank:
      - filter: { name: A, ${medium} }
      - [rise: 0.2 m, filter: { name: B, ${medium} }, rise: -20 cm]
      - bank: [filter: { name: C, ${medium} }, filter: { ${medium} }]`) as { branches: { name: string }[][] };
    expect(bank.branches.map((branch) => branch.map((part) => part.name))).toEqual([
      ["A"],
      ["rise 1", "B", "rise 2"],
      ["bank 2"],
    ]);
  });

  test("parts without a name are numbered by kind, and never take a name that is there", () => {
    const lines = "  - line: { length: 1 m, bore: 9 mm, surface: steel }\n";
    const text = changed(
      "suction:\n",
      `suction:\n${lines}  - line: { name: line 2, length: 1 m, bore: 9 mm, surface: steel }\n`,
    );
    expect(systemOf(text).suction.map(({ name }) => name)).toEqual(["line 1", "line 2", "line 3", "prefilter"]);
  });
});

describe("filters", () => {
  test.each([
    [
      "medium: { area: 0.5 m2, thickness: 0.6 mm, permeability: 2e-13 m2, inertia: 2e5 1/m }",
      { by: "medium", area: 0.5, thickness: 6e-4, permeability: 2e-13, inertia: 2e5 },
    ],
    [
      "area: 0.5 m2, air test: { flow: 6 L/min, area: 10 cm2, pressure: 200 Pa }",
      { by: "air test", flow: 1e-4, sampleArea: 1e-3, pressure: 200, area: 0.5 },
    ],
    [
      "rating: { size: 10 um, kind: beta 75, area: 0.5 m2, thickness: 0.6 mm }",
      { by: "rating", size: 1e-5, kind: "beta 75", area: 0.5, thickness: 6e-4 },
    ],
    [
      "fibre: { diameter: 5 um, solidity: 0.1, area: 0.5 m2, thickness: 0.6 mm }",
      { by: "fibre", diameter: 5e-6, solidity: 0.1, area: 0.5, thickness: 6e-4 },
    ],
    [
      "flow test: [{ drop: 5 kPa, flow: 7.2 m3/h, viscosity: 3 mm2/s, density: 800 kg/m3 }, { drop: 2 kPa, flow: 3.6 m3/h, viscosity: 2.4 mPa s, density: 800 kg/m3 }]",
      {
        by: "flow test",
        points: [
          { drop: 2000, flow: 1e-3 },
          { drop: 5000, flow: 2e-3 },
        ],
        dynamicViscosity: 2.4e-3,
        density: 800,
      },
    ],
  ])("the medium by %s", (content, medium) => {
    const { medium: found } = secondFilter(content) as { medium: Record<string, unknown> };
    expect(found).toEqual({
      ...medium,
      ...("dynamicViscosity" in medium && { dynamicViscosity: found.dynamicViscosity }),
    });
    if ("dynamicViscosity" in medium) expect(found.dynamicViscosity).toBeCloseTo(medium.dynamicViscosity, 15);
  });

  test("everything else a filter may say", () => {
    const filter = secondFilter(`style: spin-on, medium: { area: 0.5 m2, thickness: 0.6 mm, permeability: 2e-13 m2 },
      housing: { k: 4, port: 12 mm }, pleats: { depth: 15 mm, gap: 0.5 mm }, terminal drop: 35 kPa, restriction: 1.8,
      blocked: true, reversed: true, betas: [{ size: 25 um, beta: "> 1000" }, { size: 10 um, beta: 2 }],
      capacity test: { soil: 40 g, rise: 35 kPa, flow: 3.6 m3/h, viscosity: 2.5 mPa s }`);
    expect(filter).toMatchObject({
      style: "spin-on",
      area: 0.5,
      housing: { k: 4, port: 0.012 },
      pleats: { depth: 0.015, gap: 5e-4, area: 0.5 },
      terminalDrop: 35e3,
      restriction: 1.8,
      blocked: true,
      reversed: true,
      betas: [
        { size: 1e-5, beta: 2 },
        { size: 2.5e-5, beta: 1000 },
      ],
      capacityTest: { soil: 0.04, rise: 35e3, flow: 1e-3, dynamicViscosity: 2.5e-3 },
    });
  });
});

describe("what a filter says of soil and water", () => {
  const medium = "medium: { area: 0.5 m2, thickness: 0.6 mm, permeability: 2e-13 m2 }";
  const capacity = (soil: string, rise: string) =>
    `{ soil: ${soil}, rise: ${rise}, flow: 3.6 m3/h, viscosity: 2.5 mPa s }`;
  const point = { flow: 1e-3, dynamicViscosity: 2.5e-3 };
  const plain = secondFilter(medium) as object;

  test.each([
    ["leak: 2 %", { leak: 0.02 }],
    ["thread: 7 to 8 in, flow direction: inside out", { thread: "7 to 8 in", direction: "inside out" }],
    ["stated rating: { size: 10 um, kind: nominal }", { statedRating: { size: 1e-5, kind: "nominal" } }],
    [`capacity test: ${capacity("40 g", "35 kPa")}`, { capacityTest: { soil: 0.04, rise: 35e3, ...point } }],
    [
      `capacity test: [${capacity("40 g", "35 kPa")}, ${capacity("25 g", "14 kPa")}], loading law: cake-standard`,
      {
        capacityTest: { soil: 0.04, rise: 35e3, ...point },
        lighterCapacityTest: { soil: 0.025, rise: 14e3, ...point },
        loadingLaw: "cake-standard",
      },
    ],
    ["loading law: complete", { loadingLaw: "complete" }],
    ["make: glass or synthetic", { make: "glass or synthetic" }],
    [
      "bowl: 0.3 L, water: { efficiency: 95 %, at: 3.6 m3/h }",
      { bowl: 3e-4, separation: { efficiency: 0.95, flow: 1e-3 } },
    ],
    ["bowl: 0.3 L, body: 0.9 L, prefill: forbidden", { bowl: 3e-4, body: 9e-4, prefill: "forbidden" }],
    ["absorbs: { water: 500 mL, restriction: 4 }", { absorbs: { water: 0.499, restriction: 4 } }],
    [
      "absorbs: { water: 500 mL, rise: 35 kPa, flow: 3.6 m3/h, viscosity: 2.5 mPa s }",
      { absorbs: { water: 0.499, rise: 35e3, ...point } },
    ],
  ])("%s", (content, fields) => {
    expect(secondFilter(`${medium}, ${content}`)).toEqual({ ...plain, ...fields });
  });
});

describe("fuels", () => {
  const fuelOf = (content: string) => systemOf(changed("kind: diesel, grade: winter", content)).fuel;

  test.each([
    ["kind: kerosene", { kind: "kerosene" }],
    ["kind: paraffinic", { kind: "paraffinic" }],
    [
      "kind: biodiesel, share: 20 %, grade: summer",
      { kind: "biodiesel", share: 0.2, feedstock: "soy", grade: "summer" },
    ],
    ["kind: biodiesel, share: 1, feedstock: rapeseed", { kind: "biodiesel", share: 1, feedstock: "rapeseed" }],
    ["kind: petrol, class: EN 228 D1, ethanol: 5 %", { kind: "petrol", class: "EN 228 D1", ethanol: 0.05 }],
    ["kind: petrol, class: D4814 C", { kind: "petrol", class: "ASTM D4814 C", ethanol: 0 }],
    ["kind: premix, ratio: 50:1, class: EN 228 A", { kind: "premix", ratio: 50, class: "EN 228 A", ethanol: 0 }],
    ["kind: premix, ratio: 25, class: EN 228 A", { kind: "premix", ratio: 25, class: "EN 228 A", ethanol: 0 }],
  ])("%s", (content, fuel) => {
    expect(fuelOf(content)).toEqual(fuel);
  });

  test("measured figures, of a kind and of no kind", () => {
    const figures = "viscosity: [{ at: 40 degC, is: 2.6 mm2/s }, { at: 20 degC, is: 4 mm2/s }], cloud point: -16 degC";
    const viscosity = [
      { temperature: 313.15, kinematicViscosity: 2.6e-6 },
      { temperature: 293.15, kinematicViscosity: 4e-6 },
    ];
    expect(fuelOf(`kind: diesel, grade: winter, density: 835 kg/m3, ${figures}`)).toEqual({
      kind: "diesel",
      grade: "winter",
      measured: { viscosity, density: [{ temperature: 288.15, density: 835 }], cloudPoint: 257.15 },
    });
    const density = "density: [{ at: 15 degC, is: 835 kg/m3 }, { at: 40 degC, is: 817 kg/m3 }]";
    expect(fuelOf(`kind: measured, like: diesel, ${density}, ${figures}`)).toMatchObject({
      kind: "measured",
      like: "diesel",
      measured: { viscosity, density: [{ density: 835 }, { density: 817 }] },
    });
  });
});

describe("the rest of the file", () => {
  test("several tanks, each with a path", () => {
    const path = "path: [line: { length: 1 m, bore: 9 mm, surface: steel }]";
    const tanks = `tanks:
  - { name: left, full depth: 1 m, low depth: 0 m, vent: 2 kPa, ${path} }
  - { name: right, full depth: 1 m, low depth: 0.1 m, vent: { opening: 1 kPa }, volume: 60 L, ${path} }
  - { name: middle, full depth: 1 m, low depth: 0.1 m, vent: blocked, ${path} }`;
    const read = systemOf(changed("tank: { full depth: 0.5 m, low depth: 0.1 m, vent: open }", tanks)).tanks;
    expect(read.map(({ name, vent, volume }) => ({ name, vent, volume }))).toEqual([
      { name: "left", vent: { kind: "spring", opening: 2000 }, volume: undefined },
      { name: "right", vent: { kind: "spring", opening: 1000 }, volume: 0.06 },
      { name: "middle", vent: { kind: "blocked" }, volume: undefined },
    ]);
    expect(read.map((tank) => tank.path[0]?.name)).toEqual(["line 1", "line 2", "line 3"]);
  });

  test.each([
    ["none", { kind: "none" }],
    ["{ kind: none }", { kind: "none" }],
    ["{ kind: pulse, flow: 3.6 m3/h, suction: 15 kPa }", { kind: "pulse", flow: 1e-3, suction: 15e3 }],
    [
      "{ kind: curve, points: [{ flow: 0 L/h, rise: 60 kPa }, { flow: 3.6 m3/h, rise: 0 kPa }] }",
      {
        kind: "curve",
        points: [
          { flow: 0, rise: 60e3 },
          { flow: 1e-3, rise: 0 },
        ],
      },
    ],
    [
      "{ kind: fixed, flow: 3.6 m3/h, relief: 60 kPa, relief to: tank, slip: { flow: 360 L/h, rise: 50 kPa, viscosity: 1.6 mPa s } }",
      {
        kind: "fixed",
        flow: 1e-3,
        relief: 60e3,
        reliefTo: "tank",
        slip: { flow: 1e-4, rise: 50e3, dynamicViscosity: 1.6e-3 },
      },
    ],
  ])("pump: %s", (content, pump) => {
    expect(systemOf(changed("{ kind: fixed, flow: 120 L/h, relief: 60 kPa, relief to: inlet }", content)).pump).toEqual(
      pump,
    );
  });

  test("demand by power", () => {
    const { demand } = systemOf(
      changed("burn: 20 L/h, return: 30 L/h", "power: 360 kW, specific consumption: 216 g/kWh"),
    );
    expect(demand).toEqual({ power: 360e3, specificConsumption: 0.216 / 3.6e6, return: 0 });
  });

  test("protection, duty, delivered fuel, service", () => {
    const system = systemOf(`${smallSystem}protection: { code: "*/13/10" }
duty: { hours a day: 9, days a year: 300, seasons: [{ name: warm, months: 9, temperature: 20 degC }, { name: cold, share: 25 %, temperature: 0 degC }] }
delivered fuel: { code: 18 / 16 / >=7, water: 150 mg/L }
service: { interval: 250 h, at most: 500 h, distance: 15000 km, source: manual }
`);
    expect(system).toMatchObject({
      protection: { code: "*/13/10" },
      duty: {
        hoursADay: 9,
        daysAYear: 300,
        seasons: [
          { name: "warm", share: 0.75, temperature: 293.15 },
          { name: "cold", share: 0.25, temperature: 273.15 },
        ],
      },
      deliveredFuel: { code: "18/16/>=7", water: 0.15 },
      service: { interval: 900e3, atMost: 1.8e6, distance: 15e6, source: "manual" },
    });
  });

  test("a duty with loads, a distance and the day it starts", () => {
    const loads = "loads: [{ load: 60 %, share: 70 % }, { load: 100 %, share: 0.3 }]";
    const duty = `{ hours a day: 9, days a year: 300, distance: 45000 km, starts: 2024-02-29, ${loads} }`;
    expect(systemOf(`${smallSystem}duty: ${duty}\n`).duty).toEqual({
      hoursADay: 9,
      daysAYear: 300,
      distance: 45e6,
      starts: "2024-02-29",
      loads: [
        { load: 0.6, share: 0.7 },
        { load: 1, share: 0.3 },
      ],
    });
  });

  test.each([
    ["calendar: 12 months", { calendar: 365.25 * 86400 }],
    ["calendar: 1 year", { calendar: 365.25 * 86400 }],
    ["calendar: 26 weeks", { calendar: 182 * 86400 }],
    [
      "last: { date: 2026-01-15, hours: 1200 h, distance: 10000 km }",
      { last: { date: "2026-01-15", hours: 4.32e6, distance: 1e7 } },
    ],
    ["last: { hours: 0 h }", { last: { hours: 0 } }],
    ["primer: 12 mL", { primer: 1.2e-5 }],
  ])("a service with %s", (content, fields) => {
    const { service } = systemOf(`${smallSystem}service: { interval: 250 h, ${content} }\n`);
    expect(service).toEqual({ interval: 900e3, ...fields });
  });

  test.each([
    ["solids: 2 mg/L, dust: A2 fine", { solids: 2e-3, dust: "A2 fine" }],
    ["counts: { 4 um: 1500, 6 um: 400, 14 um: 60 }", { counts: { at4: 1500, at6: 400, at14: 60 } }],
    ["counts: { 6 um: 400, 14 um: 400 }, held: tank", { counts: { at6: 400, at14: 400 }, held: "tank" }],
    ["code: 18/16/13, held: delivered", { code: "18/16/13", held: "delivered fuel" }],
    [
      "code: 18/16/13, dirty delivery: { after: 100 h, volume: 600 L, code: 23/21/18 }",
      { code: "18/16/13", dirtyDelivery: { after: 360e3, volume: 0.6, code: "23/21/18" } },
    ],
    [
      "dirty delivery: { after: 0 h, volume: 600 L, solids: 40 mg/L, dust: A4 coarse }",
      { dirtyDelivery: { after: 0, volume: 0.6, solids: 0.04, dust: "A4 coarse" } },
    ],
  ])("delivered fuel with %s", (content, fields) => {
    expect(systemOf(`${smallSystem}delivered fuel: { ${content} }\n`).deliveredFuel).toEqual(fields);
  });

  test("cautions name what is taken for granted", () => {
    const open = changed("place: { altitude: 0 m }\n", "").replace(", return: 30 L/h", "");
    expect(cautionsOf(open)).toEqual([
      "place: no altitude is stated; sea level is taken",
      "demand.return: no return is stated; none is counted",
    ]);
    expect(cautionsOf(changed("kind: diesel, grade: winter", "kind: petrol, class: EN 228 A"))).toEqual([
      "fuel.ethanol: no ethanol share is stated; none is taken",
    ]);
    expect(cautionsOf(`${smallSystem}service: { interval: 250 h, distance: 15000 km }\n`)).toEqual([
      "duty.distance: no distance a year is stated; the service distance cannot be counted",
    ]);
    expect(cautionsOf(changed("name: prefilter,", "name: prefilter, betas: [{ size: 10 um, beta: 75 }],"))).toEqual([
      'suction[1].filter.betas: one beta ratio only of "prefilter"; the rest of its curve is a guess',
    ]);
  });
});

test("a fault carries file, line, column, path, code and what was received", () => {
  const read = readSystem(changed("bore: 10 mm", "bore: 10"), { file: "heron.yaml" });
  expect(read).toEqual({
    faults: [
      {
        file: "heron.yaml",
        line: 8,
        column: 32,
        path: "suction[0].line.bore",
        code: "no unit",
        received: 10,
        message: '"10" has no unit; write it as "10 mm"',
      },
    ],
  });
  if ("faults" in read && read.faults[0]) {
    expect(formatFault(read.faults[0])).toBe(
      'heron.yaml:8 suction[0].line.bore: "10" has no unit; write it as "10 mm"',
    );
  }
});
