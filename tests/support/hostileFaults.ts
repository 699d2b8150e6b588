import { type Fault, formatFault, readCatalogue, readSystem } from "@thirstline/spec";
import { check } from "@thirstline/study";
import { textOf } from "../../playground/src/file/link.js";
import { PlainFault } from "../../playground/src/file/PlainFault.js";

/** Longest that reading may take, ms of the processor's time: the clock's would count what else the machine does. */
const LONGEST = 200;

/** Slowest reading so far, ms, and what was read. */
export const slowest = { milliseconds: 0, what: "" };

/** What is wrong with how a system file is answered: it must be a sound system, or one clear list of faults. */
export function systemFaults(given: string | Uint8Array): string[] {
  return timed("a system file", given, () => {
    const read = readSystem(given, { file: "x.yaml" });
    if ("faults" in read) return listFaults(read.faults);
    const figures = JSON.stringify(read.system);
    return [
      ...(figures === JSON.stringify(JSON.parse(figures)) && !/null/.test(figures.replace(/"[^"]*"/g, ""))
        ? []
        : ["a figure is no number"]),
      ...(check(read.system).points.length === 1 ? [] : ["check gives no point"]),
    ];
  });
}

/** The same of a catalogue. */
export function catalogueFaults(given: string | Uint8Array): string[] {
  return timed("a catalogue", given, () => {
    const read = readCatalogue(given, { file: "x.csv" });
    if ("faults" in read) return listFaults(read.faults);
    return read.elements.length > 0 ? [] : ["neither elements nor faults"];
  });
}

/** The same of a link: a text or one plain sentence. */
export async function linkFaults(fragment: string): Promise<string[]> {
  const begun = process.cpuUsage();
  try {
    await textOf(fragment);
  } catch (error) {
    if (!(error instanceof PlainFault)) return [`a link threw ${String(error)}`];
    if (!/^[A-Z].*\.$/.test(error.message)) return [`a link says ${error.message}`];
  }
  return late("a link", since(begun));
}

function timed(what: string, given: string | Uint8Array, read: () => string[]): string[] {
  const own = Object.getOwnPropertyNames(Object.prototype).length;
  let found: string[] = [];
  let taken = Infinity;
  // The least of three, where the first is late: it may have had to sweep up after others.
  for (let round = 0; round < 3 && taken > LONGEST; round++) {
    const begun = process.cpuUsage();
    try {
      found = read();
    } catch (error) {
      return [`${what} of ${given.length} threw ${error instanceof Error ? error.message : String(error)}`];
    }
    taken = Math.min(taken, since(begun));
  }
  const executed = "hit" in globalThis || Object.getOwnPropertyNames(Object.prototype).length !== own;
  return [...found, ...(executed ? [`${what} ran code`] : []), ...late(what, taken)];
}

/** Processor's time since, ms. */
function since(begun: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(begun);
  return (user + system) / 1000;
}

function late(what: string, milliseconds: number): string[] {
  if (milliseconds > slowest.milliseconds) Object.assign(slowest, { milliseconds, what });
  return milliseconds > LONGEST ? [`${what} took ${milliseconds.toFixed(0)} ms`] : [];
}

function listFaults(faults: readonly Fault[]): string[] {
  if (faults.length === 0) return ["neither an answer nor faults"];
  return faults.flatMap((fault) => {
    const { line, column, message } = fault;
    const placed = Number.isInteger(line) && line >= 1 && Number.isInteger(column) && column >= 1;
    const plain = message.trim() !== "" && !/\n|undefined|\[object|\bat \S+:\d+:\d+|node_modules/.test(message);
    return placed && plain ? [] : [`a fault reads ${JSON.stringify(formatFault(fault))}`];
  });
}
