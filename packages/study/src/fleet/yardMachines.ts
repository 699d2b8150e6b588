import type { Fault, LogResult } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import type { FleetMachine } from "./FleetMachine.js";

/** A machine of whose rows in the log one is at fault, or whose log cannot be read at all, is not judged by the others. */
export function barredByLog(machine: FleetMachine, { sound, entries, doubtful, faults }: LogResult): FleetMachine {
  const unreadable = !sound && entries.length === 0;
  const line = unreadable ? (faults[0]?.line ?? 1) : doubtful.get(machine.name);
  return line === undefined ? machine : { ...machine, barred: { code: "log at fault", line } };
}

/** Every system file of a yard as a machine, last changed when the file says; where no list says which machines there are. */
export class MachinesOfFiles {
  readonly machines: FleetMachine[] = [];
  private readonly names = new Set<string>();

  /**
   * Takes a file's machine in, named as its system is, else as its file. A second of one name goes by its file instead.
   *
   * @param file its path from the yard
   * @param system null where the file could not be read
   * @param place the path that a fault names it by
   * @returns the fault that its name is taken, or null
   */
  add(file: string, system: System | null, place: string): Fault | null {
    const name = system?.name ?? file;
    if (!this.names.has(name)) {
      this.names.add(name);
      this.machines.push({ name, file, system, stakes: null, changed: system && lastChangeOf(system) });
      return null;
    }
    this.names.add(file);
    this.machines.push({ name: file, file, system: null, stakes: null, changed: null });
    const message = `"${name}" is the name of a machine in another file already; give this one its own`;
    return { file: place, line: 1, column: 1, path: "name", code: "same name", received: name, message };
  }
}

/** The last change a file states; else the day its duty begins, with new elements. */
function lastChangeOf({ service, duty }: System): FleetMachine["changed"] {
  if (service?.last) return service.last;
  return duty?.starts === undefined ? null : { date: duty.starts };
}
