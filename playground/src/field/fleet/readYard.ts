import { type Fault, type LogResult, readLog, readMachines, readShelf, type ShelfPart } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { barredByLog, type FleetMachine, MachinesOfFiles } from "@thirstline/study";
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
  return {
    machines: machines.map((machine) => barredByLog(machine, log)),
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

/** Every system file that lies beside the lists as a machine. */
function alone(files: readonly YardFile[]): Machines {
  const told = new Map<string, readonly Fault[]>();
  const known = new MachinesOfFiles();
  const twice = files
    .filter(({ path }) => /^[^/]+\.(ya?ml|json)$/i.test(path))
    .flatMap(({ path }) => known.add(path, systems.read(path, files, told), path) ?? []);
  return { machines: known.machines, faults: [...[...told.values()].flat(), ...twice] };
}
