import { type Fault, readSystem } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { MACHINES, type YardFile } from "./YardFile.js";
import { fileNamed } from "./yardPaths.js";

interface Read {
  readonly text: string;
  readonly system: System | null;
  readonly faults: readonly Fault[];
}

/** Reads a yard's system files, each only when it changed. */
export class SystemReader {
  private readonly known = new Map<string, Read>();

  /** The system a list names, and what is wrong with its file; faults of a file come once for each `told`. */
  read(name: string, files: readonly YardFile[], told: Map<string, readonly Fault[]>): System | null {
    const path = fileNamed(
      name,
      files.map((file) => file.path),
    );
    const file = files.find((one) => one.path === path);
    if (!file) {
      told.set(name, [missing(name)]);
      return null;
    }
    const text = new TextDecoder("utf-8", { ignoreBOM: true }).decode(file.bytes);
    const before = this.known.get(file.path);
    const read = before?.text === text ? before : readOne(file, text);
    this.known.set(file.path, read);
    told.set(file.path, read.faults);
    return read.system;
  }
}

function readOne({ path, bytes }: YardFile, text: string): Read {
  const read = readSystem(bytes, { file: path });
  return "system" in read ? { text, system: read.system, faults: [] } : { text, system: null, faults: read.faults };
}

function missing(name: string): Fault {
  const message = `${MACHINES} names it, and it is not among the files; open the folder that holds both, or add this file`;
  return { file: name, line: 1, column: 1, path: "", code: "no such file", received: null, message };
}
