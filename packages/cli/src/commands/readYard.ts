import { join } from "node:path";
import {
  type Fault,
  type LogResult,
  readLog,
  readMachines,
  readShelf,
  readSystem,
  type ShelfPart,
  type YardMachine,
} from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { barredByLog, type FleetMachine, MachinesOfFiles } from "@thirstline/study";
import type { Io } from "../io/Io.js";
import { readFolder } from "../io/readFolder.js";
import { readInputs } from "../io/readInput.js";

/** Files of a folder that are no system. */
export const LOG_FILE = "log.csv";
const MACHINES_FILE = "machines.csv";
const SHELF_FILE = "shelf.csv";

/** A folder read: its machines, log and shelf, and everything that is wrong with its files. */
export interface Yard {
  readonly machines: readonly FleetMachine[];
  readonly log: LogResult;
  readonly shelf: readonly ShelfPart[];
  readonly faults: readonly Fault[];
}

/**
 * Reads a folder of system files with its log. The list of machines says which machines there are; without one every system
 * file is a machine.
 */
export async function readYard(folder: string, io: Io): Promise<Yard | { readonly faults: readonly Fault[] }> {
  const found = await readFolder(folder, io);
  if ("fault" in found) return { faults: [found.fault] };
  const reader = new FolderReader(folder, io);
  const has = (name: string) => found.names.includes(name);
  const logBytes = has(LOG_FILE) ? await reader.bytes(LOG_FILE) : new Uint8Array();
  const log = readLog(logBytes ?? new Uint8Array(), { file: join(folder, LOG_FILE) });
  const shelfBytes = has(SHELF_FILE) ? await reader.bytes(SHELF_FILE) : null;
  const shelf = shelfBytes && readShelf(shelfBytes, { file: join(folder, SHELF_FILE) });
  reader.faults.push(...log.faults, ...(shelf?.faults ?? []));
  const machines = has(MACHINES_FILE)
    ? await reader.listed(MACHINES_FILE)
    : await reader.alone(found.names.filter((name) => /\.(ya?ml|json)$/i.test(name)));
  if (machines.length === 0 && reader.faults.length === 0) {
    const message = `there is no system file in it, and no ${MACHINES_FILE}`;
    reader.faults.push({ file: folder, line: 1, column: 1, path: "", code: "no such file", received: null, message });
  }
  return {
    machines: machines.map((machine) => barredByLog(machine, log)),
    log,
    shelf: shelf?.rows ?? [],
    faults: reader.faults,
  };
}

/** Reads files of a folder, each once, and gathers what is wrong. */
class FolderReader {
  readonly faults: Fault[] = [];
  private readonly folder: string;
  private readonly io: Io;
  private readonly systems = new Map<string, System | null>();

  constructor(folder: string, io: Io) {
    this.folder = folder;
    this.io = io;
  }

  async bytes(name: string): Promise<Uint8Array | null> {
    const [input] = await readInputs([join(this.folder, name)], this.io);
    if (input && "bytes" in input) return input.bytes;
    if (input) this.faults.push(input.fault);
    return null;
  }

  /** Machines of a list. */
  async listed(name: string): Promise<FleetMachine[]> {
    const bytes = await this.bytes(name);
    if (bytes === null) return [];
    const { rows, faults } = readMachines(bytes, { file: join(this.folder, name) });
    this.faults.push(...faults);
    const machines: FleetMachine[] = [];
    for (const row of rows) machines.push(await this.machineOf(row));
    return machines;
  }

  private async machineOf({ machine, system, stakes, changed }: YardMachine): Promise<FleetMachine> {
    return { name: machine, file: system, system: await this.system(system), stakes, changed: changed ?? null };
  }

  /** Every system file as a machine. */
  async alone(names: readonly string[]): Promise<readonly FleetMachine[]> {
    const known = new MachinesOfFiles();
    for (const file of names) {
      const fault = known.add(file, await this.system(file), join(this.folder, file));
      if (fault !== null) this.faults.push(fault);
    }
    return known.machines;
  }

  private async system(file: string): Promise<System | null> {
    const known = this.systems.get(file);
    if (known !== undefined) return known;
    const bytes = await this.bytes(file);
    const read = bytes && readSystem(bytes, { file: join(this.folder, file) });
    if (read && "faults" in read) this.faults.push(...read.faults);
    const system = read && "system" in read ? read.system : null;
    this.systems.set(file, system);
    return system;
  }
}
