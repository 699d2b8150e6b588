import { meterFault } from "@thirstline/spec";
import type { LogEntry } from "@thirstline/spec/system";
import { type FleetMachine, type FleetReason, fleet, fleetReasonWords } from "@thirstline/study";

/** What makes a log say nothing of a machine. */
const UNTRUSTED: ReadonlySet<FleetReason["code"]> = new Set(["log dated ahead", "no such element", "runs backwards"]);

/** Why new entries cannot follow those a log has, each machine's reasons once; none when they can. */
export function refusals(
  old: readonly LogEntry[],
  entries: readonly LogEntry[],
  machines: readonly FleetMachine[],
  on: string,
): string[] {
  const names = [...new Set(entries.map(({ machine }) => machine))];
  return names.flatMap((name) => {
    const machine = machines.find((one) => one.name === name);
    if (!machine) return [];
    const own = (rows: readonly LogEntry[]) => rows.filter((one) => one.machine === name);
    const [before, added] = [own(old), own(entries)];
    const meters = meterFaults(before, added);
    if (meters.length > 0) return meters.map((message) => `${name}: ${message}`);
    const already = reasonsOf(machine, before, on);
    const now = reasonsOf(machine, [...before, ...added], on);
    return now.filter((reason) => !already.includes(reason)).map((reason) => `${name}: ${reason}`);
  });
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
      // What was wrong before is told when the list is asked for; it does not keep anyone from writing.
      if (earlier === undefined || !(added.includes(row) || added.includes(earlier))) return [];
      const message = meterFault(earlier, row, meter);
      return message === null ? [] : [message];
    });
  });
}

function reasonsOf(machine: FleetMachine, rows: readonly LogEntry[], on: string): string[] {
  const { barred: _rowAtFault, ...free } = machine;
  const [entry] = fleet([free], rows, { on }).entries;
  return (entry?.reasons ?? []).filter(({ code }) => UNTRUSTED.has(code)).map(fleetReasonWords);
}
