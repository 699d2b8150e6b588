import type { CellReader } from "../table/cellReader.js";
import type { PlacedEntry } from "./LogEntry.js";
import type { LogColumn } from "./logForm.js";
import { meterFault } from "./meterFault.js";

/** Rows whose meters show less than on an earlier day without a new meter; their faults are told. */
export function backwardFaults(placed: readonly PlacedEntry[], cells: CellReader<LogColumn>): PlacedEntry[] {
  const byMachine = new Map<string, PlacedEntry[]>();
  for (const one of placed) {
    const own = byMachine.get(one.entry.machine);
    if (own) own.push(one);
    else byMachine.set(one.entry.machine, [one]);
  }
  return [...byMachine.values()].flatMap((own) => {
    const inOrder = [...own].sort((left, right) =>
      left.entry.date < right.entry.date ? -1 : left.entry.date > right.entry.date ? 1 : 0,
    );
    return (["hours", "distance"] as const).flatMap((meter) => {
      let last: PlacedEntry | null = null;
      return inOrder.filter((one) => {
        if (one.entry[meter] === undefined) return false;
        const message = last === null ? null : meterFault(last.entry, one.entry, meter);
        if (message === null) last = one;
        else cells.fault(one.row, meter, "runs backwards", message);
        return message !== null;
      });
    });
  });
}
