import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** How large an invented yard is. */
export interface YardSize {
  readonly machines: number;
  readonly systems: number;
  /** rows of the log for each machine */
  readonly rows: number;
}

/** Two weeks and a day between two rows of a machine. */
const STEP = 15;
const FIRST = Date.UTC(2026, 0, 5);
const DAY = 24 * 3600 * 1000;

/**
 * Writes a yard into a folder, all invented: so many systems, no two alike, so many machines over them, and a log. The
 * same size gives the same yard to the letter.
 */
export function writeBigYard(folder: string, { machines, systems, rows }: YardSize): void {
  mkdirSync(join(folder, "systems"), { recursive: true });
  for (let at = 0; at < systems; at++) writeFileSync(join(folder, "systems", `${at}.yaml`), systemText(at));
  const list = Array.from({ length: machines }, (_, at) => {
    const stakes = at % 3 === 0 ? "a nuisance" : "stops the work";
    return `machine ${at},systems/${at % systems}.yaml,${stakes}`;
  });
  writeFileSync(join(folder, "machines.csv"), `machine,system,stakes\n${list.join("\n")}\n`);
  const log = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: machines }, (_, at) => {
      const date = new Date(FIRST + (row * STEP + (at % STEP)) * DAY).toISOString().slice(0, 10);
      const hours = 1000 + at + row * STEP * (2 + (at % 5));
      const event = row % 6 === 0 ? "changed all" : "reading";
      return `machine ${at},${date},${hours},${(8 + (at % 7) + row * 0.1).toFixed(1)},${event}`;
    }).join("\n"),
  );
  writeFileSync(join(folder, "log.csv"), `machine,date,hours (h),gauge (kPa),event\n${log.join("\n")}\n`);
}

/** A diesel system with a prefilter and a fine filter; its figures differ with its number. */
function systemText(at: number): string {
  const figure = (from: number, step: number, digits: number) => (from + (at % 50) * step).toFixed(digits);
  return `format: thirstline/1
name: system ${at}
fuel: { kind: diesel, grade: winter, cloud point: -16 degC, CFPP: -26 degC, temperature: 15 degC }
place: { altitude: ${at * 3} m }
demand: { power: ${figure(60, 4, 0)} kW, specific consumption: 215 g/kWh, return: ${figure(40, 1, 0)} L/h }
tank: { name: tank, full depth: 0.8 m, low depth: 0.1 m, vent: open, volume: 400 L }
suction:
  - line: { name: hose, length: ${figure(2, 0.05, 2)} m, bore: 16 mm, surface: rubber hose }
  - rise: 0.6 m
  - filter:
      name: prefilter
      style: spin-on
      flow test: [{ drop: 2 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }]
      area: 0.8 m2
      betas: [{ size: 10 um, beta: 2 }, { size: 25 um, beta: 75 }]
      capacity test: { soil: ${figure(90, 1, 0)} g ± 20 %, rise: 35 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }
      make: glass or synthetic
pump: { kind: fixed, flow: 400 L/h, relief: 80 kPa, relief to: inlet }
delivery:
  - filter:
      name: fine filter
      style: cartridge
      flow test: [{ drop: 3 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }]
      area: 1.0 m2
      betas: [{ size: 4 um, beta: 10 }, { size: 10 um, beta: 200 }]
      capacity test: { soil: 100 g, rise: 50 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }
      make: glass or synthetic
limits: { vacuum clean: 20 kPa, vacuum at change: 40 kPa, feed pressure: 20 kPa, source: operator's manual }
duty:
  hours a day: ${figure(3, 0.1, 1)}
  days a year: 280
  loads: [{ load: 40 %, share: 40 % }, { load: 100 %, share: 60 % }]
  seasons: [{ name: warm, months: 8, temperature: 18 degC }, { name: cold, months: 4, temperature: -5 degC }]
delivered fuel: { code: 18/16/13 }
service: { interval: ${250 + (at % 4) * 50} h, at most: 500 h, calendar: 12 months, source: operator's manual }
`;
}
