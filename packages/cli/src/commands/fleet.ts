import { writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import type { Fault } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { type FleetAnswer, fleet, fleetCalendar, fleetCsv, isUncertain } from "@thirstline/study";
import type { FleetQuery } from "../args/FleetQuery.js";
import type { Query } from "../args/Query.js";
import type { Run } from "../args/Run.js";
import { readFleetQuery } from "../args/readFleetQuery.js";
import { readQuery } from "../args/readQuery.js";
import { drawShown } from "../draw/drawShown.js";
import { exit, fleetExit, worst } from "../exit.js";
import { argumentFaults, complain } from "../io/complain.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { painter } from "../io/paint.js";
import { fleetJson } from "../json/fleetJson.js";
import { fleetText } from "../text/fleetText.js";
import { readYard, type Yard } from "./readYard.js";

/** `thirstline fleet`: what is due? */
export const runFleet: Run = async (request, io, out, err) => {
  const json = request.given.has("json");
  const query = await readQuery(request);
  const asked = readFleetQuery(request, "faults" in query ? { draws: 0 } : query);
  if ("faults" in query || "faults" in asked) {
    const faults = [query, asked].flatMap((one) => ("faults" in one ? one.faults : []));
    return complain(argumentFaults(faults), json, out, err);
  }
  const [folder = "."] = request.files;
  const yard = await readYard(folder, io);
  if (!("machines" in yard) || yard.machines.length === 0) return complain(yard.faults, json, out, err);
  if (asked.log.length > 0) {
    const { writeLog } = await import("../log/writeLog.js");
    return writeLog({ folder, yard, asked, json }, io, out, err);
  }
  const answer = fleet(yard.machines, yard.log.entries, {
    ...asked,
    shelf: yard.shelf,
    lives: await livesOf(yard, asked, query, io, err),
  });
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

/** How long the elements of each system last in many draws, where that was asked for and anything is uncertain. */
async function livesOf(
  { machines }: Yard,
  { draws }: FleetQuery,
  query: Query,
  io: Io,
  err: Output,
): Promise<(system: System) => Float64Array | null> {
  const drawn = new Map<System, Float64Array>();
  if (draws > 0) {
    const systems = new Set(machines.flatMap(({ system }) => (system === null ? [] : [system])));
    for (const system of systems) {
      if (isUncertain(system)) drawn.set(system, await drawShown({ question: "life", system }, query, io, err));
    }
  }
  return (system) => drawn.get(system) ?? null;
}

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
