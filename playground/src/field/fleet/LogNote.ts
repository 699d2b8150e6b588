/** An entry for the log as it is typed. */
export interface LogNote {
  readonly machine: string;
  readonly date: string;
  readonly hours: string;
  readonly distance: string;
  readonly gauge: string;
  /** elements that were changed, by name; "all" for all of them */
  readonly changed: readonly string[];
  readonly newHourMeter: boolean;
  readonly newDistanceMeter: boolean;
  readonly note: string;
}

/** The entry as it is said to the log's reader: pieces between commas, the note last. */
export function noteText(note: LogNote): string {
  const pieces = [
    note.machine,
    note.date,
    note.hours,
    note.distance,
    note.gauge,
    ...note.changed.map((name) => `changed ${name}`),
    note.newHourMeter ? "new hour meter" : "",
    note.newDistanceMeter ? "new distance meter" : "",
    note.note === "" ? "" : `note: ${note.note}`,
  ];
  return pieces
    .map((piece) => piece.trim())
    .filter((piece) => piece !== "")
    .join(", ");
}
