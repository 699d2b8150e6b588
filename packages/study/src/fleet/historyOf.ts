import type { LogEntry } from "@thirstline/spec/system";
import { dayOf } from "./day.js";
import type { FleetReason } from "./FleetAnswer.js";
import type { FleetMachine } from "./FleetMachine.js";
import type { MeterReading } from "./Meter.js";
import type { Outlook } from "./outlookOf.js";

/** What a machine's log comes to. */
export interface History {
  readonly hours: readonly MeterReading[];
  readonly distance: readonly MeterReading[];
  /** day of each element's last change, by name; null when nobody says */
  readonly changed: ReadonlyMap<string, number | null>;
  /** the latest gauge reading with the present suction elements, Pa */
  readonly gauge: { readonly date: string; readonly value: number } | null;
  /** what makes the log say nothing */
  readonly reasons: readonly FleetReason[];
}

/**
 * Goes through a machine's rows in the order of their days. What was known of its last change before the log counts as a
 * row before them.
 *
 * A gauge reading in the row of a change was read before it: what the new element shows is a row of its own.
 */
export function historyOf(machine: FleetMachine, entries: readonly LogEntry[], outlook: Outlook, on: string): History {
  const rows = inOrder([...baseOf(machine), ...entries]);
  const names = outlook.elements.map(({ name }) => name);
  const changed = new Map<string, number | null>(names.map((name) => [name, null]));
  const suction = new Set(outlook.elements.filter(({ isSuction }) => isSuction).map(({ name }) => name));
  let gauge: History["gauge"] = null;
  const reasons: FleetReason[] = [];
  for (const { date, event, gauge: value } of rows) {
    if (date > on && reasons.length === 0) reasons.push({ code: "log dated ahead", date });
    if (value !== undefined) gauge = { date, value };
    if (event.kind !== "changed") continue;
    const meant = event.element === null ? names : names.filter((name) => sameName(name, event.element ?? ""));
    if (meant.length === 0 && event.element !== null) {
      reasons.push({ code: "no such element", element: event.element, known: names });
    }
    for (const name of meant) changed.set(name, dayOf(date));
    if (meant.some((name) => suction.has(name))) gauge = null;
  }
  const hours = readingsOf(rows, "hours");
  const distance = readingsOf(rows, "distance");
  reasons.push(...backwards(hours, "hours", rows), ...backwards(distance, "distance", rows));
  return { hours, distance, changed, gauge, reasons };
}

function baseOf({ name, changed }: FleetMachine): LogEntry[] {
  if (changed?.date === undefined) return [];
  const { date, hours, distance } = changed;
  return [
    {
      machine: name,
      date,
      event: { kind: "changed", element: null },
      ...(hours === undefined ? {} : { hours }),
      ...(distance === undefined ? {} : { distance }),
    },
  ];
}

function inOrder(rows: LogEntry[]): LogEntry[] {
  return rows.sort((left, right) => (left.date < right.date ? -1 : left.date > right.date ? 1 : 0));
}

function sameName(one: string, other: string): boolean {
  return one === other || one.toLowerCase() === other.toLowerCase();
}

function readingsOf(rows: readonly LogEntry[], meter: "hours" | "distance"): MeterReading[] {
  const renewed = meter === "hours" ? "new hour meter" : "new distance meter";
  return rows.flatMap(({ date, event, [meter]: value }) =>
    value === undefined ? [] : [{ day: dayOf(date), value, isNew: event.kind === renewed }],
  );
}

function backwards(
  readings: readonly MeterReading[],
  meter: "hours" | "distance",
  rows: readonly LogEntry[],
): FleetReason[] {
  const at = readings.findIndex(({ value, isNew }, place) => !isNew && value < (readings[place - 1]?.value ?? value));
  const day = readings[at]?.day;
  const row = day === undefined ? undefined : rows.find(({ date }) => dayOf(date) === day);
  return row === undefined ? [] : [{ code: "runs backwards", meter, date: row.date }];
}
