import type { ReadingPlace } from "../gauge/GaugeAnswer.js";

/** A reading as a sentence names it. */
export function gaugePlace({ row, line }: ReadingPlace): string {
  return line === null ? `reading ${row}` : `reading ${row} (line ${line})`;
}
