import type { LogResult } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import type { FleetMachine } from "./FleetMachine.js";
import { barredByLog, MachinesOfFiles } from "./yardMachines.js";

const machine = { name: "one", file: "one.yaml", system: null, stakes: null, changed: null } as FleetMachine;
const log = (more: object = {}) =>
  ({ sound: true, entries: [{}], doubtful: new Map(), faults: [], ...more }) as unknown as LogResult;

test("barredByLog(machine, log) leaves a machine as it is whose rows are good", () => {
  expect(barredByLog(machine, log({ doubtful: new Map([["two", 3]]) }))).toBe(machine);
  expect(barredByLog(machine, log({ entries: [] }))).toBe(machine);
  // What was read of a log that is not sound counts, where something was.
  expect(barredByLog(machine, log({ sound: false, faults: [{ line: 4 }] }))).toBe(machine);
});

test("barredByLog(machine, log) bars it by the line of its row at fault, or of a log that cannot be read at all", () => {
  const barred = (line: number) => ({ ...machine, barred: { code: "log at fault", line } });
  expect(barredByLog(machine, log({ doubtful: new Map([["one", 3]]) }))).toEqual(barred(3));
  expect(barredByLog(machine, log({ sound: false, entries: [], faults: [{ line: 4 }, { line: 9 }] }))).toEqual(
    barred(4),
  );
  expect(barredByLog(machine, log({ sound: false, entries: [] }))).toEqual(barred(1));
});

const system = (name: string, more: object = {}) => ({ name, ...more }) as unknown as System;

test("MachinesOfFiles names each machine as its system is, or as its file where that could not be read", () => {
  const yard = new MachinesOfFiles();
  const heron = system("Heron");
  expect(yard.add("a.yaml", heron, "yard/a.yaml")).toBeNull();
  expect(yard.add("b.yaml", null, "yard/b.yaml")).toBeNull();
  expect(yard.machines).toEqual([
    { name: "Heron", file: "a.yaml", system: heron, stakes: null, changed: null },
    { name: "b.yaml", file: "b.yaml", system: null, stakes: null, changed: null },
  ]);
});

test("MachinesOfFiles takes the last change a file states, else the day its duty begins", () => {
  const last = { date: "2026-03-01", hours: 7 };
  const changedOf = (more: object) => {
    const yard = new MachinesOfFiles();
    yard.add("a.yaml", system("Heron", more), "a.yaml");
    return yard.machines[0]?.changed;
  };
  expect(changedOf({ service: { last }, duty: { starts: "2026-01-01" } })).toEqual(last);
  expect(changedOf({ service: {}, duty: { starts: "2026-01-01" } })).toEqual({ date: "2026-01-01" });
  expect(changedOf({ duty: {} })).toBeNull();
});

test("MachinesOfFiles lets a second of one name go by its file, with nothing of it, and says so", () => {
  const yard = new MachinesOfFiles();
  yard.add("a.yaml", system("Heron"), "yard/a.yaml");
  expect(yard.add("b.yaml", system("Heron"), "yard/b.yaml")).toEqual({
    file: "yard/b.yaml",
    line: 1,
    column: 1,
    path: "name",
    code: "same name",
    received: "Heron",
    message: '"Heron" is the name of a machine in another file already; give this one its own',
  });
  expect(yard.machines[1]).toEqual({ name: "b.yaml", file: "b.yaml", system: null, stakes: null, changed: null });
  // And what is called as that file is, after it, is a second of that name.
  expect(yard.add("c.yaml", system("b.yaml"), "yard/c.yaml")).not.toBeNull();
});
