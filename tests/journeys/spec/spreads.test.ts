import { readFileSync } from "node:fs";
import { formatFault, readSystem, type System } from "@thirstline/spec";
import { build, withDraw } from "@thirstline/spec/system";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { smallSystem } from "./smallSystem.js";

function systemOf(text: string): System {
  const read = readSystem(text, { file: "x.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(formatFault).join("\n"));
  return read.system;
}

/** The small system with one text put for another, which must be there. */
function changed(from: string, to: string): string {
  if (!smallSystem.includes(from)) throw new Error(`no ${from} to change`);
  return smallSystem.replace(from, to);
}

function withFuel(delivered: string): System {
  return systemOf(`${smallSystem}delivered fuel: ${delivered}\n`);
}

/** Draws of an evenly drawn number for each spread. */
function drawn(system: System, at: number | readonly number[]): System {
  const spreads = system.spreads ?? [];
  return withDraw(
    system,
    spreads.map((_, index) => (typeof at === "number" ? at : (at[index % at.length] ?? 0))),
  );
}

describe("readSystem(file).spreads", () => {
  test("is not there in a file without a spread", () => {
    expect(systemOf(smallSystem)).not.toHaveProperty("spreads");
  });

  test("points at the figure in the system, which holds the middle", () => {
    const system = withFuel("{ solids: 2 to 8 mg/L, water: 150 mg/L ± 20 % }");
    expect(system.deliveredFuel).toEqual({ solids: 4e-3, water: 0.15 });
    expect(system.spreads).toEqual([
      { path: ["deliveredFuel", "solids"], low: 2e-3, high: 8e-3 },
      { path: ["deliveredFuel", "water"], low: 0.12, high: 0.18 },
    ]);
  });

  test("stands on what is reckoned from the written figure", () => {
    const kinematic = "viscosity: 3 mm2/s ± 10 %, density: 800 kg/m3";
    const path = ["suction", 1, "medium", "dynamicViscosity"];
    const [only, ...more] = systemOf(changed("viscosity: 2.5 mPa s", kinematic)).spreads ?? [];
    expect(more).toEqual([]);
    expect(only?.path).toEqual(path);
    expect(only?.low).toBeCloseTo(2.16e-3, 15);
    expect(only?.high).toBeCloseTo(2.64e-3, 15);
    const dense = systemOf(changed("viscosity: 2.5 mPa s", "viscosity: 3 mm2/s, density: 800 ± 80 kg/m3"));
    expect(dense.spreads).toMatchObject([
      { path, low: expect.closeTo(2.16e-3, 15), high: expect.closeTo(2.64e-3, 15), group: 0 },
      { path: ["suction", 1, "medium", "density"], low: 720, high: 880, group: 0 },
    ]);
  });

  test.each([
    ["vent: open", "vent: 1 to 2 kPa", ["tanks", 0, "vent", "opening"], 1e3, 2e3],
    ["temperature: 15 degC", "temperature: 15 degC ± 5 K", ["temperature"], 283.15, 293.15],
    ["burn: 20 L/h", "burn: 36 ± 18 L/h", ["demand", "burn"], 5e-6, 15e-6],
    ["altitude: 0 m", "altitude: -10 to 20 m", ["altitude"], -10, 20],
    [
      "grade: winter,",
      "grade: winter, density: 820 to 840 kg/m3,",
      ["fuel", "measured", "density", 0, "density"],
      820,
      840,
    ],
    ["grade: winter,", "grade: winter, cloud point: -10 ± 2 degC,", ["fuel", "measured", "cloudPoint"], 261.15, 265.15],
    [
      "relief to: inlet }",
      "relief to: inlet }\nduty: { hours a day: 1, days a year: 9, distance: 1 to 2 km }",
      ["duty", "distance"],
      1e3,
      2e3,
    ],
    ["suction:\n", "suction:\n  - rise: 0.5 to 0.9 m\n", ["suction", 0, "height"], 0.5, 0.9],
    ["name: prefilter,", "name: prefilter, leak: 1 to 3 %,", ["suction", 1, "leak"], 0.01, 0.03],
  ] as const)("of %j as %j", (from, to, path, low, high) => {
    const [only, ...more] = systemOf(changed(from, to)).spreads ?? [];
    expect(more).toEqual([]);
    expect(only).toEqual({ path, low: expect.closeTo(low, 12), high: expect.closeTo(high, 12) });
  });

  test("is one unknown in the copies of one block, and another in another text of the same words", () => {
    const filter = "flow test: [{ drop: 2 kPa ± 10 %, flow: 100 L/h, viscosity: 2.5 mPa s }], leak: 1 to 3 %";
    const bank = `  - bank:
      - filter: &a { name: A, ${filter} }
      - filter: { <<: *a, name: B }
      - filter: { name: C, ${filter} }
pump:`;
    const spreads = systemOf(changed("pump:", bank)).spreads ?? [];
    expect(spreads.map(({ path, group }) => [path[3], path.at(-1), group])).toEqual([
      [0, "drop", 0],
      [0, "leak", 1],
      [1, "drop", 0],
      [1, "leak", 1],
      [2, "drop", undefined],
      [2, "leak", undefined],
    ]);
  });

  test("is refused where spreads of one flow test meet at ends that no element could show", () => {
    const point = (drop: string, flow: string) =>
      `{ drop: ${drop}, flow: ${flow}, viscosity: 2.5 mPa s, density: 830 kg/m3 }`;
    // Only with all four at their worst the second drop lags behind the flow.
    const points = `${point("2 kPa ± 5 %", "100 L/h ± 5 %")}, ${point("4.6 kPa ± 5 %", "200 L/h ± 5 %")}`;
    const text = changed("{ drop: 2 kPa, flow: 100 L/h, viscosity: 2.5 mPa s }", points);
    expect(() => systemOf(text)).toThrow("the drop grows less than in step with the flow");
    expect(systemOf(text.replace("4.6 kPa", "5 kPa")).spreads).toHaveLength(4);
  });

  test("takes no free text for a spread", () => {
    expect(systemOf(changed("name: test machine", "name: 2 to 5 mm"))).not.toHaveProperty("spreads");
  });

  test("reads as many as are allowed in the blink of an eye, and no more", () => {
    const filters = (count: number) =>
      changed(
        "pump:",
        `${Array.from({ length: count }, (_, at) => `  - filter: { name: f${at}, leak: 1 to ${at + 2} %, medium: { area: 1 m2, thickness: 1 mm, permeability: 1e-12 m2 } }\n`).join("")}pump:`,
      );
    const times = [1, 2, 3].map(() => {
      const start = performance.now();
      systemOf(filters(64));
      return performance.now() - start;
    });
    expect(Math.min(...times)).toBeLessThan(400);
    const spreads = systemOf(filters(64)).spreads ?? [];
    expect(spreads.map(({ path, high }) => [path[1], Math.round(high * 100)])).toEqual(
      spreads.map((_, at) => [at + 2, at + 2]),
    );
    expect(spreads).toHaveLength(64);
    expect(() => systemOf(filters(65))).toThrow("65 figures with a spread; at most 64 are taken");
  });
});

describe("withDraw(system, at)", () => {
  const system = withFuel("{ solids: 2 to 8 mg/L, water: 100 to 140 mg/L }");
  const at = (...draws: number[]) => withDraw(system, draws).deliveredFuel;

  test("sets the ends to the last figure, and leaves no spread and the given system as it was", () => {
    const before = structuredClone(system);
    expect(at(0, 1)).toEqual({ solids: 2e-3, water: 0.14 });
    expect(at(1, 0)).toEqual({ solids: 8e-3, water: 0.1 });
    expect(withDraw(system, [0, 0])).not.toHaveProperty("spreads");
    expect(system).toEqual(before);
  });

  test("is even over the logarithm where the ends differ by more than 1.5 times, else even between them", () => {
    expect(at(0.5, 0.5)?.solids).toBeCloseTo(4e-3, 15);
    expect(at(0.25, 0.25)?.solids).toBeCloseTo(2e-3 * Math.SQRT2, 15);
    expect(at(0.25, 0.25)?.water).toBeCloseTo(0.11, 15);
    const cold = systemOf(changed("altitude: 0 m", "altitude: -10 to 30 m"));
    expect(withDraw(cold, [0.25]).altitude).toBeCloseTo(0, 12);
  });

  test("draws the copies of one product alike", () => {
    const filter = "medium: { area: 1 m2, thickness: 1 mm, permeability: 1e-12 to 4e-12 m2 }";
    const bank = `  - bank: [filter: &a { name: A, ${filter} }, filter: { <<: *a, name: B }]\npump:`;
    const twins = systemOf(changed("pump:", bank));
    const { suction } = withDraw(twins, [0.5, 0.9]);
    const [, , last] = suction;
    const media = last?.part === "bank" ? last.branches.map(([part]) => part?.part === "filter" && part.medium) : [];
    expect(media).toEqual([expect.objectContaining({ permeability: expect.closeTo(2e-12, 25) }), media[0]]);
  });

  test("refuses draws that are too few or none", () => {
    expect(() => withDraw(system, [0.5])).toThrow("withDraw requires at to be 2 numbers, one for each spread, got 1");
    expect(() => withDraw(system, [0.5, 1.1])).toThrow("withDraw requires at[1] to be between 0 and 1, got 1.1");
    expect(() => withDraw(system, [Number.NaN, 0])).toThrow("withDraw requires at[0] to be between 0 and 1, got NaN");
  });

  test("of a system without a spread is the system", () => {
    expect(withDraw(systemOf(smallSystem), [])).toEqual(systemOf(smallSystem));
  });
});

const demos = ["heron", "crane", "generator", "workboat", "lorry", "dewatering"];

test.each(demos)("withDraw(%s, any draws) can be built, and keeps between the ends", (name) => {
  const system = systemOf(readFileSync(new URL(`../../../packages/spec/demo/${name}.yaml`, import.meta.url), "utf8"));
  expect(system.spreads?.length).toBeGreaterThan(0);
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 9 }), (at) => {
      const sample = drawn(system, at);
      build(sample);
      for (const { path, low, high } of system.spreads ?? []) {
        const value = path.reduce<unknown>((inner, step) => (inner as Record<string | number, unknown>)[step], sample);
        expect(value).toBeGreaterThanOrEqual(low);
        expect(value).toBeLessThanOrEqual(high);
      }
    }),
    { numRuns: 50 },
  );
});

/** Concentrations and temperatures in other units, sizes typed anew from exact definitions. */
const concentrations = { "mg/L": 1e-3, "g/m3": 1e-3, "kg/m3": 1, "ug/mL": 1e-3, "lb/ft3": 0.45359237 / 0.3048 ** 3 };
const scales = {
  K: { zero: 0, step: 1 },
  degC: { zero: 273.15, step: 1 },
  degF: { zero: 459.67 / 1.8, step: 1 / 1.8 },
};

const aConcentrationUnit = fc.constantFrom(...(Object.keys(concentrations) as (keyof typeof concentrations)[]));
const aScale = fc.constantFrom(...(Object.keys(scales) as (keyof typeof scales)[]));

test("withDraw(file, at) is the same to 1e-13 whatever units its spreads are written in", () => {
  const written = fc.record({
    centre: fc.double({ min: 1e-3, max: 1, noNaN: true }),
    part: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    form: fc.constantFrom("ends", "one unit", "tolerance", "two units", "percent"),
    units: fc.tuple(aConcentrationUnit, aConcentrationUnit),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(written, ({ centre, part, form, units: [unit, other], at }) => {
      const [size, otherSize] = [concentrations[unit], concentrations[other]];
      const [low, high] = [centre * (1 - part), centre * (1 + part)];
      const text = {
        ends: `${low / size} ${unit} to ${high / otherSize} ${other}`,
        "one unit": `${low / size} to ${high / size} ${unit}`,
        tolerance: `${centre / size} ± ${(centre * part) / size} ${unit}`,
        "two units": `${centre / size} ${unit} ± ${(centre * part) / otherSize} ${other}`,
        percent: `${centre / size} ${unit} +/- ${part * 100} %`,
      }[form];
      const plain = withFuel(`{ solids: ${low} kg/m3 to ${high} kg/m3 }`);
      const found = drawn(withFuel(`{ solids: ${text} }`), at).deliveredFuel?.solids ?? Number.NaN;
      const wanted = drawn(plain, at).deliveredFuel?.solids ?? Number.NaN;
      // Rounding is of the ends; near the low one it is of the difference of two larger figures.
      expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-13 * high);
    }),
    { numRuns: 100 },
  );
});

test("withDraw(file, at) is the same to 1e-12 K whatever scale a temperature's spread is written in", () => {
  const written = fc.record({
    centre: fc.double({ min: 250, max: 320, noNaN: true }),
    tolerance: fc.double({ min: 0.1, max: 20, noNaN: true }),
    form: fc.constantFrom("ends", "tolerance"),
    scale: fc.tuple(aScale, aScale),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(written, ({ centre, tolerance, form, scale: [name, other], at }) => {
      const on = (kelvin: number, scale: keyof typeof scales) =>
        `${(kelvin - scales[scale].zero) / scales[scale].step} ${scale}`;
      const text =
        form === "ends"
          ? `${on(centre - tolerance, name)} to ${on(centre + tolerance, other)}`
          : `${on(centre, name)} ± ${tolerance / scales[other].step} ${other}`;
      const found = drawn(systemOf(changed("temperature: 15 degC", `temperature: ${text}`)), at).temperature;
      expect(Math.abs(found - (centre + tolerance * (2 * at - 1)))).toBeLessThanOrEqual(1e-12 * 320);
    }),
    { numRuns: 100 },
  );
});
