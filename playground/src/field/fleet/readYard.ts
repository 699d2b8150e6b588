import { type Fault, type LogResult, readLog, readMachines, readShelf, type ShelfPart } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import type { FleetMachine } from "@thirstline/study";
import { SystemReader } from "./SystemReader.js";
import { LOG, MACHINES, SHELF, type YardFile } from "./YardFile.js";

/** A yard read: its machines, log and shelf, and everything that is wrong with its files. */
export interface Yard {
  readonly machines: readonly FleetMachine[];
  readonly log: LogResult;
  readonly shelf: readonly ShelfPart[];
  readonly faults: readonly Fault[];
}

const systems = new SystemReader();

/**
 * Reads a yard's files as the command line reads a folder: the list of machines says which machines there are; without one
 * every system file is a machine. A machine of whose rows in the log one is at fault is not judged by the others.
 *
 * @param only the one machine whose system is wanted; those of the others are then not read
 */
export function readYard(files: readonly YardFile[], only?: string): Yard {
  const bytesOf = (path: string) => files.find((file) => file.path === path)?.bytes;
  const log = readLog(bytesOf(LOG) ?? new Uint8Array(), { file: LOG });
  const shelfBytes = bytesOf(SHELF);
  const shelf = shelfBytes && readShelf(shelfBytes, { file: SHELF });
  const list = bytesOf(MACHINES);
  const { machines, faults } = list ? listed(list, files, only) : alone(files);
  const unreadable = !log.sound && log.entries.length === 0;
  const barred = (machine: FleetMachine): FleetMachine => {
    const line = unreadable ? (log.faults[0]?.line ?? 1) : log.doubtful.get(machine.name);
    return line === undefined ? machine : { ...machine, barred: { code: "log at fault", line } };
  };
  return {
    machines: machines.map(barred),
    log,
    shelf: shelf?.rows ?? [],
    faults: [...log.faults, ...(shelf?.faults ?? []), ...faults],
  };
}

interface Machines {
  readonly machines: readonly FleetMachine[];
  readonly faults: readonly Fault[];
}

function listed(list: Uint8Array, files: readonly YardFile[], only: string | undefined): Machines {
  const { rows, faults } = readMachines(list, { file: MACHINES });
  const told = new Map<string, readonly Fault[]>();
  const known = new Map<string, System | null>();
  const machines = rows.map(({ machine, system: file, stakes, changed }): FleetMachine => {
    const unwanted = only !== undefined && machine !== only;
    if (unwanted) return { name: machine, file, system: null, stakes, changed: changed ?? null };
    const system = known.has(file) ? (known.get(file) ?? null) : systems.read(file, files, told);
    known.set(file, system);
    return { name: machine, file, system, stakes, changed: changed ?? null };
  });
  return { machines, faults: [...faults, ...[...told.values()].flat()] };
}

/** Every system file that lies beside the lists as a machine, last changed when the file says. */
function alone(files: readonly YardFile[]): Machines {
  const told = new Map<string, readonly Fault[]>();
  const twice: Fault[] = [];
  const machines: FleetMachine[] = [];
  for (const { path } of files.filter((file) => /^[^/]+\.(ya?ml|json)$/i.test(file.path))) {
    const system = systems.read(path, files, told);
    const name = system?.name ?? path;
    if (machines.some((one) => one.name === name)) {
      const message = `"${name}" is the name of a machine in another file already; give this one its own`;
      twice.push({ file: path, line: 1, column: 1, path: "name", code: "same name", received: name, message });
      machines.push({ name: path, file: path, system: null, stakes: null, changed: null });
    } else machines.push({ name, file: path, system, stakes: null, changed: system && changedOf(system) });
  }
  return { machines, faults: [...[...told.values()].flat(), ...twice] };
}

/** The last change a file states; else the day its duty begins, with new elements. */
function changedOf({ service, duty }: System): FleetMachine["changed"] {
  if (service?.last) return service.last;
  return duty?.starts === undefined ? null : { date: duty.starts };
}
