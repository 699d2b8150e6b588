import { logLines, logWith, newLogHead, readLog, readLogNote } from "@thirstline/spec";
import { logRefusals } from "@thirstline/study";
import type { Asked, Told } from "../messages.js";
import { noteText } from "./LogNote.js";
import { readYard } from "./readYard.js";
import { LOG } from "./YardFile.js";

/** The log with an entry after its last row, or why it cannot stand there. */
export function workEntry({ files, on, note }: Extract<Asked, { kind: "entry" }>): Told {
  const refuse = (...why: string[]): Told => ({ kind: "not entered", why });
  const { machines, log } = readYard(files, note.machine);
  if (!log.sound) {
    const [fault] = log.faults;
    return refuse(
      `line ${fault?.line ?? 1} of ${LOG} has to be put right first: ${fault?.message ?? "it cannot be read"}`,
    );
  }
  const read = readLogNote(
    noteText(note),
    machines.map(({ name }) => name),
  );
  if ("message" in read) return refuse(read.message);
  const machine = machines.find(({ name }) => name === note.machine);
  const wrong = machine ? logRefusals(log.entries, read.entries, machine, on) : [];
  if (wrong.length > 0) return refuse(...wrong);
  const begun = log.columns.length > 0;
  const { columns, separator } = begun ? log : readLog(`${newLogHead}\n`, { file: LOG });
  const lines = logLines(read.entries, columns, separator);
  if ("noColumn" in lines) {
    return refuse(...lines.noColumn.map((name) => `${LOG} has no column "${name}"; add it to its head first`));
  }
  const old = files.find(({ path }) => path === LOG)?.bytes ?? new Uint8Array();
  const written = lines.lines;
  return {
    kind: "entry",
    log: { path: LOG, bytes: logWith(old, begun ? written : [newLogHead, ...written]) },
    written,
  };
}
