import { readDate } from "../schema/leaves/date.js";
import { shown } from "../shown.js";
import type { TableForm } from "../table/readTable.js";
import { yardBounds } from "./logBounds.js";
import { readYard, type YardResult } from "./readYard.js";
import type { Stakes, YardMachine } from "./YardMachine.js";

type MachineColumn = "machine" | "system" | "stakes" | "changed" | "hours" | "distance";

const form: TableForm<MachineColumn> = {
  what: "a list of machines",
  columns: {
    machine: "text",
    system: "text",
    stakes: "text",
    changed: "text",
    hours: "runningTime",
    distance: "odometer",
  },
  needed: ["machine", "system"],
  synonyms: {
    name: "machine",
    file: "system",
    "system file": "system",
    criticality: "stakes",
    "last change": "changed",
  },
  bounds: yardBounds,
};

const allStakes: readonly Stakes[] = ["stops the work", "a nuisance"];

/**
 * Reads a yard's list of machines: a table (CSV) of machine, system (its system file), stakes ("stops the work" or "a
 * nuisance"), and, where the log does not go back so far, the day all elements were changed and what the meters showed.
 *
 * @param given the file's text, or its bytes, which must be UTF-8
 * @returns good rows in SI, and the faults of the others, each with line and column; it never throws
 * @example
 * readMachines("machine,system,stakes,changed,hours (h)\nHeron,heron.yaml,stops the work,2026-03-01,11400\n", { file })
 */
export function readMachines(given: string | Uint8Array, { file }: { readonly file: string }): YardResult<YardMachine> {
  const seen = new Set<string>();
  return readYard(given, file, form, (row, cells) => {
    const machine = cells.text(row, "machine");
    const system = cells.text(row, "system");
    const written = cells.text(row, "changed");
    const hours = cells.quantity(row, "hours");
    const distance = cells.quantity(row, "distance");
    if (machine === "") cells.fault(row, "machine", "missing", "missing; give the machine a name");
    else if (seen.has(machine)) {
      const message = `${shown(machine)} is the name of a machine above already; give this one its own`;
      cells.fault(row, "machine", "same name", message);
    }
    seen.add(machine);
    if (system === "") cells.fault(row, "system", "missing", "missing; name the machine's system file");
    const stakes = allStakes.find((one) => one === cells.text(row, "stakes").toLowerCase()) ?? null;
    if (stakes === null && cells.text(row, "stakes") !== "") {
      const message = `${shown(cells.text(row, "stakes"))} is not known; write "stops the work" or "a nuisance"`;
      cells.fault(row, "stakes", "unknown stakes", message);
    }
    const date = written === "" ? null : readDate(written, "the day of the last change such as 2026-03-01");
    if (date !== null && "fault" in date) cells.fault(row, "changed", date.fault.code, date.fault.message);
    const changed = {
      ...(date !== null && "value" in date ? { date: date.value } : {}),
      ...(hours === undefined ? {} : { hours }),
      ...(distance === undefined ? {} : { distance }),
    };
    return { machine, system, stakes, ...(Object.keys(changed).length === 0 ? {} : { changed }) };
  });
}
