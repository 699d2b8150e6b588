import { meterFault } from "@thirstline/spec";
import type { LogEntry } from "@thirstline/spec/system";
import { fleetReasonWords } from "../say/fleetReasonWords.js";
import type { FleetReason } from "./FleetAnswer.js";
import type { FleetMachine } from "./FleetMachine.js";
import { fleet } from "./fleet.js";

/** What makes a log say nothing of a machine. */
const UNTRUSTED: ReadonlySet<FleetReason["code"]> = new Set(["log dated ahead", "no such element", "runs backwards"]);

/**
 * Why new entries of one machine cannot follow those a log has: a meter that would run backwards or faster than time, an
 * entry dated ahead, an element the machine does not have. None when they can; what was wrong before is not told again.
 *
 * @param old rows of the whole log
 * @param entries new ones of this machine
 * @param on today, as "2026-11-25"
 */
export function logRefusals(
  old: readonly LogEntry[],
  entries: readonly LogEntry[],
  machine: FleetMachine,
  on: string,
): string[] {
  const before = old.filter((one) => one.machine === machine.name);
  const meters = meterFaults(before, entries);
  if (meters.length > 0) return meters;
  const already = reasonsOf(machine, before, on);
  return reasonsOf(machine, [...before, ...entries], on).filter((reason) => !already.includes(reason));
}

/** Meters that would run backwards, or faster than time, by day and then in the order of the log. */
function meterFaults(before: readonly LogEntry[], added: readonly LogEntry[]): string[] {
  const rows = [...before, ...added].sort((left, right) =>
    left.date < right.date ? -1 : left.date > right.date ? 1 : 0,
  );
  return (["hours", "distance"] as const).flatMap((meter) => {
    const read = rows.filter((row) => row[meter] !== undefined);
    return read.flatMap((row, at) => {
      const earlier = read[at - 1];
      // What was wrong before is told by the list; it does not keep anyone from writing.
      if (earlier === undefined || !(added.includes(row) || added.includes(earlier))) return [];
      return meterFault(earlier, row, meter) ?? [];
    });
  });
}

function reasonsOf(machine: FleetMachine, rows: readonly LogEntry[], on: string): string[] {
  const { barred: _rowAtFault, ...free } = machine;
  const [entry] = fleet([free], rows, { on }).entries;
  return (entry?.reasons ?? []).filter(({ code }) => UNTRUSTED.has(code)).map(fleetReasonWords);
}
