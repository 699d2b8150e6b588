import { formatFault, readSystem } from "@thirstline/spec";
import fc from "fast-check";
import { expect, test } from "vitest";

/** Units of one measure, each with its size in SI; sizes from exact definitions (NIST SP 811), typed here anew. */
const units = {
  length: { m: 1, mm: 1e-3, cm: 1e-2, in: 0.0254, ft: 0.3048, thou: 2.54e-5, um: 1e-6 },
  area: { m2: 1, cm2: 1e-4, in2: 0.0254 ** 2, ft2: 0.3048 ** 2 },
  volume: { m3: 1, L: 1e-3, gal: 3.785411784e-3, impgal: 4.54609e-3, cc: 1e-6 },
  flow: {
    "m3/s": 1,
    "L/h": 1e-3 / 3600,
    "L/min": 1e-3 / 60,
    lpm: 1e-3 / 60,
    "gal/h": 3.785411784e-3 / 3600,
    gph: 3.785411784e-3 / 3600,
    gpm: 3.785411784e-3 / 60,
    "impgal/h": 4.54609e-3 / 3600,
    cfm: 0.3048 ** 3 / 60,
  },
  pressure: {
    Pa: 1,
    kPa: 1e3,
    mbar: 100,
    bar: 1e5,
    psi: 4.4482216152605 / 6.4516e-4,
    inHg: 25.4 * 133.322387415,
    inH2O: 249.08891,
    mmHg: 133.322387415,
  },
  viscosity: { "mm2/s": 1e-6, cSt: 1e-6, St: 1e-4, "m2/s": 1 },
  density: { "kg/m3": 1, "g/cm3": 1e3, "kg/L": 1e3, "g/L": 1, "lb/ft3": 0.45359237 / 0.3048 ** 3 },
  mass: { kg: 1, g: 1e-3, lb: 0.45359237, oz: 0.45359237 / 16 },
  power: { W: 1, kW: 1e3, hp: 745.6998715822702, PS: 735.49875 },
  consumption: { "kg/J": 1, "g/kWh": 1e-3 / 3.6e6, "lb/hp-h": 0.45359237 / (745.6998715822702 * 3600) },
  time: { s: 1, h: 3600, min: 60, day: 86400 },
} as const;

type Measure = keyof typeof units;

/** Writes a value in SI in a unit of its measure; the unit is drawn from a list of numbers, one for each value. */
class Writer {
  private readonly draws: readonly number[];
  private next = 0;

  constructor(draws: readonly number[]) {
    this.draws = draws;
  }

  of(measure: Measure, si: number): string {
    const choices = Object.entries(units[measure]);
    const [unit, size] = choices[this.draw() % choices.length] as [string, number];
    return `${si / size} ${unit}`;
  }

  temperature(kelvin: number): string {
    const celsius = kelvin - 273.15;
    return [`${kelvin} K`, `${celsius} degC`, `${celsius * 1.8 + 32} degF`, `${celsius} °C`][this.draw() % 4] ?? "";
  }

  private draw(): number {
    const drawn = this.draws[this.next % this.draws.length] ?? 0;
    this.next += 1;
    return drawn;
  }
}

function fileIn(draws: readonly number[]): string {
  const w = new Writer(draws);
  const test = () =>
    `drop: ${w.of("pressure", 2.3e3)}, flow: ${w.of("flow", 5.7e-5)}, viscosity: ${w.of("viscosity", 3.1e-6)}, density: ${w.of("density", 831)}`;
  return `format: thirstline/1
name: any units
fuel: { kind: diesel, grade: winter, temperature: ${w.temperature(281.3)}, viscosity: [{ at: ${w.temperature(313.15)}, is: ${w.of("viscosity", 2.6e-6)} }] }
place: { altitude: ${w.of("length", 853)} }
demand: { power: ${w.of("power", 451e3)}, specific consumption: ${w.of("consumption", 5.8e-8)}, return: ${w.of("flow", 6.1e-5)} }
tank: { full depth: ${w.of("length", 1.1)}, low depth: ${w.of("length", 0.23)}, vent: ${w.of("pressure", 1.7e3)}, volume: ${w.of("volume", 2.4)} }
suction:
  - line: { length: ${w.of("length", 6.1)}, bore: ${w.of("length", 0.0191)}, roughness: ${w.of("length", 1.1e-5)} }
  - rise: ${w.of("length", 0.91)}
  - filter: { name: A, flow test: [{ ${test()} }], area: ${w.of("area", 1.03)}, betas: [{ size: ${w.of("length", 1.1e-5)}, beta: 75 }], capacity test: { soil: ${w.of("mass", 0.041)}, rise: ${w.of("pressure", 35e3)}, flow: ${w.of("flow", 5.7e-5)}, viscosity: ${w.of("viscosity", 3.1e-6)}, density: ${w.of("density", 831)} } }
pump: { kind: fixed, flow: ${w.of("flow", 1.39e-4)}, relief: ${w.of("pressure", 81e3)}, relief to: inlet }
limits: { vacuum clean: ${w.of("pressure", 20.3e3)}, vacuum at change: ${w.of("pressure", 40.6e3)} }
service: { interval: ${w.of("time", 900e3)} }
`;
}

/** Every figure of a system with its path. */
function figures(value: unknown, path = ""): [string, number][] {
  if (typeof value === "number") return [[path, value]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => figures(inner, `${path}.${key}`));
}

function figuresOf(text: string): [string, number][] {
  const read = readSystem(text, { file: "x.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(formatFault).join("\n"));
  return figures(read.system);
}

test("readSystem(file) gives the same system to 1e-13 whatever units the file uses", () => {
  const inSi = figuresOf(fileIn([0]));
  expect(inSi.length).toBeGreaterThan(30);
  fc.assert(
    fc.property(fc.array(fc.nat({ max: 1000 }), { minLength: 40, maxLength: 40 }), (draws) => {
      const found = figuresOf(fileIn(draws));
      expect(found.map(([path]) => path)).toEqual(inSi.map(([path]) => path));
      found.forEach(([path, value], index) => {
        const wanted = inSi[index]?.[1] ?? Number.NaN;
        expect(Math.abs(value - wanted), path).toBeLessThanOrEqual(1e-13 * Math.abs(wanted));
      });
    }),
    { numRuns: 100 },
  );
});
