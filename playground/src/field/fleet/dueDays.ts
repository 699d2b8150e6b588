import type { FleetAnswer, FleetEntry, FleetPart } from "@thirstline/study";

/** A day on which a machine falls due. */
export interface DueDay {
  /** today where it is past */
  readonly day: string;
  readonly entry: FleetEntry;
  readonly past: boolean;
}

/** What falls due in the days looked ahead, day by day; what is late stands under today. */
export function dueDays({ entries, on, within }: FleetAnswer): DueDay[] {
  return entries
    .flatMap((entry): DueDay[] => {
      const { due, group } = entry;
      if (due === null || group === "cannot say" || due.days > within) return [];
      return [{ day: due.date < on ? on : due.date, entry, past: due.date < on }];
    })
    .sort((left, right) => (left.day < right.day ? -1 : left.day > right.day ? 1 : 0));
}

/** The month of a day: "November 2026". */
export function monthWords(day: string): string {
  const format = new Intl.DateTimeFormat("en-GB", { month: "long", year: "numeric", timeZone: "UTC" });
  return format.format(Date.parse(`${day}T00:00:00Z`));
}

/** Parts as a table shows them. */
export function partRows(parts: readonly FleetPart[], on: string) {
  return parts.map(({ part, style, count, onHand, short, first, orderBy }) => ({
    part,
    style: style ?? "",
    need: String(count),
    onHand: onHand === null ? "?" : String(onHand),
    short: String(short),
    first,
    orderBy: orderBy === null ? "" : orderBy <= on ? "today" : orderBy,
  }));
}
