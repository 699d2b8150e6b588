import { csvCell } from "../say/csvCell.js";
import { fleetReasonWords } from "../say/fleetReasonWords.js";
import { type UnitSystem, unitOf } from "../say/units.js";
import type { FleetAnswer, FleetEntry } from "./FleetAnswer.js";

/** The list of a fleet as comma-separated values, a line for each machine, in the units shown. */
export function fleetCsv({ entries }: FleetAnswer, units: UnitSystem): string {
  const { symbol } = unitOf("vacuum", units);
  const head = `group,machine,system,stakes,due,days,by,early,late,change,chance,running (h/day),rate from,gauge (${symbol}),reasons`;
  return `${[head, ...entries.map((entry) => lineOf(entry, units))].join("\n")}\n`;
}

function lineOf(entry: FleetEntry, units: UnitSystem): string {
  const { group, machine, system, stakes, due, change, chance, hours, gauge, reasons } = entry;
  const cells = [
    group,
    machine,
    system,
    stakes ?? "",
    due?.date ?? "",
    due === null ? "" : String(due.days),
    due?.by ?? "",
    due?.early ?? "",
    due?.late ?? "",
    change.join("; "),
    chance === null ? "" : rounded(chance),
    hours === null ? "" : rounded(hours.perDay / 3600),
    hours?.from ?? "",
    gauge === null ? "" : rounded(gauge.value / unitOf("vacuum", units).size),
    reasons.map(fleetReasonWords).join("; "),
  ];
  return cells.map(csvCell).join(",");
}

/** Six digits: more than any input is known to. */
function rounded(value: number): string {
  return String(Number(value.toPrecision(6)));
}
