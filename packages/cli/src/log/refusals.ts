import type { LogEntry } from "@thirstline/spec/system";
import { type FleetMachine, logRefusals } from "@thirstline/study";

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
    const added = entries.filter((one) => one.machine === name);
    return logRefusals(old, added, machine, on).map((reason) => `${name}: ${reason}`);
  });
}
