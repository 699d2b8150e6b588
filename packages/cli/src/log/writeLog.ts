import { join, resolve } from "node:path";
import { logLines, newLogHead, readLog, readLogNote } from "@thirstline/spec";
import type { LogEntry } from "@thirstline/spec/system";
import type { FleetQuery } from "../args/FleetQuery.js";
import { LOG_FILE, type Yard } from "../commands/readYard.js";
import { type Exit, exit } from "../exit.js";
import { argumentFaults, complain } from "../io/complain.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { appendToLog } from "./appendToLog.js";
import { diskFiles } from "./diskFiles.js";
import { refusals } from "./refusals.js";

/** What is to be put into which log. */
export interface LogJob {
  readonly folder: string;
  readonly yard: Yard;
  readonly asked: FleetQuery;
  readonly json: boolean;
}

/** Puts entries into a folder's log, all or none; tells what was written, or why nothing was. */
export async function writeLog(job: LogJob, io: Io, out: Output, err: Output): Promise<Exit> {
  const { folder, yard, asked, json } = job;
  const refuse = (messages: readonly string[]) =>
    complain(argumentFaults(messages.map((message) => ({ at: "--log", code: "refused", message }))), json, out, err);
  const names = yard.machines.map(({ name }) => name);
  const read = asked.log.map((text) => readLogNote(text, names));
  const wrong = read.flatMap((one) => ("message" in one ? [one.message] : []));
  if (wrong.length > 0) return refuse(wrong);
  const entries = read.flatMap((one) => ("entries" in one ? one.entries : []));
  const file = join(folder, LOG_FILE);
  let written: readonly string[] = [];
  let refused: readonly string[] = [];
  const done = await appendToLog(resolve(io.cwd, file), diskFiles, (bytes) => {
    const lines = linesAfter(bytes, entries, job, file);
    if ("refused" in lines) {
      refused = lines.refused;
      return { refused: refused.join("; ") };
    }
    written = lines.written;
    return [...lines.head, ...written];
  });
  if ("refused" in done) return refuse(refused.length > 0 ? refused : [`${file}: ${done.refused}`]);
  const text = json
    ? JSON.stringify({ file, written, doubt: done.doubt }, null, 2)
    : written.map((line) => `${file}: ${line}`).join("\n");
  await out.write(`${text}\n`);
  if (done.doubt === null) return exit.yes;
  if (!json) await err.write(`${file}: ${done.doubt}\n`);
  return exit.fault;
}

/** The lines to put after a log as it is now; refused where its rows cannot be told apart, or the new ones do not fit. */
function linesAfter(
  bytes: Uint8Array,
  entries: readonly LogEntry[],
  { yard, asked }: LogJob,
  file: string,
): { head: readonly string[]; written: readonly string[] } | { readonly refused: readonly string[] } {
  const log = readLog(bytes, { file });
  if (!log.sound) {
    const [fault] = log.faults;
    return {
      refused: [`${file}:${fault?.line ?? 1} has to be put right first: ${fault?.message ?? "it cannot be read"}`],
    };
  }
  const wrong = refusals(log.entries, entries, yard.machines, asked.on);
  if (wrong.length > 0) return { refused: wrong };
  const head = log.columns.length === 0 ? [newLogHead] : [];
  const { columns, separator } = log.columns.length === 0 ? readLog(`${newLogHead}\n`, { file }) : log;
  const lines = logLines(entries, columns, separator);
  if ("lines" in lines) return { head, written: lines.lines };
  return { refused: lines.noColumn.map((name) => `${file} has no column "${name}"; add it to its head first`) };
}
