import { readFileSync } from "node:fs";
import { readSystem } from "@thirstline/spec";
import type { LogEntry, System } from "@thirstline/spec/system";
import { dateOf, dayOf, type FleetMachine } from "@thirstline/study";
import fc from "fast-check";

/** A demonstration system. */
export function demoSystem(name: string): System {
  const file = `${name}.yaml`;
  const read = readSystem(readFileSync(new URL(`../../packages/spec/demo/${file}`, import.meta.url)), { file });
  if ("faults" in read) throw new Error(read.faults.map(({ message }) => message).join("\n"));
  return read.system;
}

/** A system without how dirty its fuel comes, whose restriction is not predicted; it is judged in no time. */
export function unpredicted({ deliveredFuel: _fuel, ...system }: System): System {
  return system;
}

/** A machine under a name. */
export function machineOf(name: string, system: System, more: Partial<FleetMachine> = {}): FleetMachine {
  return { name, file: `${name}.yaml`, system, stakes: null, changed: null, ...more };
}

/** The first day of every log here. */
export const FIRST = "2026-01-01";

/** What happens between two rows, and what the second says. */
const aStep = fc.record({
  days: fc.integer({ min: 1, max: 70 }),
  hoursADay: fc.double({ min: 0, max: 20, noNaN: true }),
  gauge: fc.option(fc.double({ min: 0, max: 60e3, noNaN: true }), { nil: undefined }),
  event: fc.constantFrom("reading", "reading", "changed all", "changed first", "new hour meter", "note"),
});

/** Logs of a machine that never run backwards; they begin with a change of all elements. */
export function aLog(machine: string, firstElement: string): fc.Arbitrary<LogEntry[]> {
  return fc.array(aStep, { maxLength: 8 }).map((steps) => {
    let [day, hours] = [dayOf(FIRST), 1000 * 3600];
    const rows: LogEntry[] = [{ machine, date: FIRST, hours, event: { kind: "changed", element: null } }];
    for (const { days, hoursADay, gauge, event } of steps) {
      day += days;
      hours = event === "new hour meter" ? 0 : hours + days * hoursADay * 3600;
      const common = { machine, date: dateOf(day), ...(gauge === undefined ? {} : { gauge }) };
      if (event === "note") rows.push({ ...common, event: { kind: "note" } });
      else if (event === "changed all") rows.push({ ...common, hours, event: { kind: "changed", element: null } });
      else if (event === "changed first")
        rows.push({ ...common, hours, event: { kind: "changed", element: firstElement } });
      else rows.push({ ...common, hours, event: { kind: event as "reading" | "new hour meter" } });
    }
    return rows;
  });
}
