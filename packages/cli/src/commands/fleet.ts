import { writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import type { Fault } from "@thirstline/spec";
import { type FleetAnswer, fleet, fleetCalendar, fleetCsv } from "@thirstline/study";
import type { FleetQuery } from "../args/FleetQuery.js";
import type { Run } from "../args/Run.js";
import { exit, fleetExit, worst } from "../exit.js";
import { complain } from "../io/complain.js";
import type { Io } from "../io/Io.js";
import { painter } from "../io/paint.js";
import { fleetJson } from "../json/fleetJson.js";
import { fleetText } from "../text/fleetText.js";
import { fleetOptions } from "./fleetOptions.js";
import { readFleet } from "./readFleet.js";

/** `thirstline fleet`: what is due? */
export const runFleet: Run = async (request, io, out, err) => {
  const json = request.given.has("json");
  const read = await readFleet(request, io, out, err);
  if (read === null) return exit.fault;
  const { query, asked, yard, folder } = read;
  if (asked.log.length > 0) {
    const { writeLog } = await import("../log/writeLog.js");
    return writeLog({ folder, yard, asked, json }, io, out, err);
  }
  const answer = fleet(yard.machines, yard.log.entries, await fleetOptions(read, request, io, err));
  const faults = [...yard.faults, ...(await writeCalendar(answer, asked, io))];
  // The list stands whatever is wrong with a file; a program gets both in one answer.
  if (query.form === "json") await out.write(`${JSON.stringify({ ...fleetJson(answer), faults }, null, 2)}\n`);
  else {
    if (faults.length > 0) await complain(faults, false, out, err);
    const text =
      query.form === "csv"
        ? fleetCsv(answer, query.units)
        : `${fleetText(answer, query.units, painter(io)).join("\n")}\n`;
    await out.write(text);
  }
  return worst([...answer.entries.map(fleetExit), ...(faults.length > 0 ? [exit.fault] : [])]);
};

async function writeCalendar(answer: FleetAnswer, { ics }: FleetQuery, { cwd }: Io): Promise<Fault[]> {
  if (ics === null) return [];
  try {
    await writeFile(resolve(cwd, ics), await fleetCalendar(answer));
    return [];
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    const place = { file: ics, line: 1, column: 1, path: "", received: null };
    return [{ ...place, code: "unreadable", message: `cannot be written: ${UNWRITABLE[code] ?? message}` }];
  }
}

/** Why a file cannot be written, in plain words. */
const UNWRITABLE: Readonly<Record<string, string>> = {
  ENOENT: "there is no such folder",
  EISDIR: "it is a folder",
  EACCES: "permission denied",
  EROFS: "the disk is read-only",
  ENOSPC: "the disk is full",
};
