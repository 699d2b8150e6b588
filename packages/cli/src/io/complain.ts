import type { Fault } from "@thirstline/spec";
import type { ArgumentFault } from "../args/ArgumentFault.js";
import { type Exit, exit } from "../exit.js";
import type { Output } from "./Output.js";
import type { UnreadCode } from "./readInput.js";

/** What the command line is called where a fault names its file. */
const COMMAND_LINE = "command line";

/** Codes of files that were not read at all, so that a line would mean nothing. */
const UNREAD: ReadonlySet<string> = new Set<UnreadCode>([
  "no such file",
  "folder",
  "unreadable",
  "binary",
  "read twice",
]);

/** Faults of the command line in the form of a file's. */
export function argumentFaults(faults: readonly ArgumentFault[]): Fault[] {
  return faults.map(({ at, code, message }) => ({
    file: COMMAND_LINE,
    line: 1,
    column: 1,
    path: at,
    code,
    received: null,
    message,
  }));
}

/** Tells all faults, one a line on standard error, or as JSON on standard output. */
export async function complain(faults: readonly Fault[], json: boolean, out: Output, err: Output): Promise<Exit> {
  if (json) await out.write(`${JSON.stringify({ faults }, null, 2)}\n`);
  else for (const fault of faults) await err.write(`${await lineOf(fault)}\n`);
  return exit.fault;
}

async function lineOf(fault: Fault): Promise<string> {
  if (fault.file === COMMAND_LINE) return `thirstline: ${fault.path} ${fault.message}`;
  if (UNREAD.has(fault.code)) return `${fault.file}: ${fault.message}`;
  const { formatFault } = await import("@thirstline/spec");
  return formatFault(fault);
}
