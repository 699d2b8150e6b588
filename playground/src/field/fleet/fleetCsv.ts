import { type FleetAnswer, type FleetEntry, fleetReasonWords, type UnitSystem, unitOf } from "@thirstline/study";

/** The list of a fleet as comma-separated values, a line for each machine, as the command line writes it. */
export function fleetCsv({ entries }: FleetAnswer, units: UnitSystem): string {
  const { symbol } = unitOf("vacuum", units);
  const head = `group,machine,system,stakes,due,days,by,early,late,change,chance,running (h/day),rate from,gauge (${symbol}),reasons`;
  return `${[head, ...entries.map((entry) => lineOf(entry, units))].join("\n")}\n`;
}

function lineOf(entry: FleetEntry, units: UnitSystem): string {
  const { due, hours, gauge, chance } = entry;
  const cells = [
    entry.group,
    entry.machine,
    entry.system,
    entry.stakes ?? "",
    due?.date ?? "",
    due === null ? "" : String(due.days),
    due?.by ?? "",
    due?.early ?? "",
    due?.late ?? "",
    entry.change.join("; "),
    chance === null ? "" : rounded(chance),
    hours === null ? "" : rounded(hours.perDay / 3600),
    hours?.from ?? "",
    gauge === null ? "" : rounded(gauge.value / unitOf("vacuum", units).size),
    entry.reasons.map(fleetReasonWords).join("; "),
  ];
  return cells.map(cell).join(",");
}

/** Six digits: more than any input is known to. */
function rounded(value: number): string {
  return String(Number(value.toPrecision(6)));
}

function cell(text: string): string {
  return /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
