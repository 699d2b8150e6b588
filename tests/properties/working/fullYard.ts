import { readFileSync } from "node:fs";
import { readLog, readMachines, readShelf } from "@thirstline/spec";
import type { LogEntry } from "@thirstline/spec/system";
import { type FleetMachine, type FleetOptions, fleet } from "@thirstline/study";
import type { fleetChoice } from "@thirstline/study/working";
import { demoSystem } from "../../support/fleets.js";

const folder = new URL("../../../packages/spec/demo/yard/", import.meta.url);
const textOf = (file: string) => readFileSync(new URL(file, folder));
/** The day the yard is asked about. */
export const on = "2026-11-25";

/** The demonstration yard, and machines whose logs reach what it does not: new meters, past gauges, changes nobody dated. */
export function fullYard(): Parameters<typeof fleetChoice> {
  const machines = readMachines(textOf("machines.csv"), { file: "machines.csv" }).rows.map(
    ({ machine: name, system: file, stakes, changed = null }): FleetMachine => ({
      name,
      stakes,
      changed,
      file,
      system: demoSystem(file.replace(/^.*\/|\.yaml$/g, "")),
    }),
  );
  const heron = demoSystem("heron");
  const more = ["renewed", "over", "between", "inside", "undated"].map(
    (name): FleetMachine => ({
      name,
      file: "heron.yaml",
      system: heron,
      stakes: null,
      changed: name === "undated" ? { hours: 1000 * 3600 } : null,
    }),
  );
  const row = (machine: string, date: string, hours: number, rest: Partial<LogEntry> = {}): LogEntry => ({
    machine,
    date,
    hours: hours * 3600,
    event: { kind: "reading" },
    ...rest,
  });
  const changed = { event: { kind: "changed", element: null } } as const;
  const log: LogEntry[] = [
    ...readLog(textOf("log.csv"), { file: "log.csv" }).entries,
    row("renewed", "2026-06-01", 1000, changed),
    row("renewed", "2026-07-15", 1100),
    row("renewed", "2026-08-01", 3, { event: { kind: "new hour meter" } }),
    row("renewed", "2026-09-10", 90),
    row("renewed", "2026-11-20", 250),
    row("over", "2026-11-01", 1000, changed),
    row("over", "2026-11-20", 1095, { gauge: 40e3 }),
    row("between", "2026-09-20", 1000, changed),
    row("between", "2026-11-20", 1140, { gauge: 24e3 }),
    row("inside", "2026-09-20", 1000, changed),
    row("inside", "2026-11-20", 1140, { gauge: 14e3 }),
    row("undated", "2026-10-01", 1100),
    row("undated", "2026-11-20", 1200),
  ];
  const shelf = readShelf(textOf("shelf.csv"), { file: "shelf.csv" }).rows;
  const lives = () => Float64Array.from({ length: 40 }, (_, at) => (at === 3 ? Number.NaN : at * 20 * 3600));
  const options: FleetOptions = { on, shelf, lives };
  return [[...machines, ...more], log, fleet([...machines, ...more], log, options), options];
}
