import type { GaugeReading } from "@thirstline/spec/system";

/** Columns as they are written: the head, with the unit its figures are in, and the figure or the words. */
const columns: readonly { readonly head: string; readonly of: (one: GaugeReading) => number | string | undefined }[] = [
  { head: "hours (h)", of: ({ hours }) => over(hours, 3600) },
  { head: "date", of: ({ date }) => date },
  { head: "vacuum (kPa)", of: ({ vacuum }) => over(vacuum, 1000) },
  { head: "feed pressure (kPa)", of: ({ feedPressure }) => over(feedPressure, 1000) },
  { head: "load (%)", of: ({ load }) => over(load, 0.01) },
  { head: "flow (L/h)", of: ({ flow }) => over(flow, 1e-3 / 3600) },
  { head: "temperature (degC)", of: ({ temperature }) => temperature && temperature - 273.15 },
  { head: "tank level (m)", of: ({ depth }) => depth },
  { head: "changed", of: ({ changed }) => (changed ? "yes" : undefined) },
  { head: "note", of: ({ note }) => note },
];

/** Readings as a table that `readReadings` reads; columns that nothing was noted in are left out. */
export function readingsCsv(readings: readonly GaugeReading[]): string {
  const used = columns.filter(
    ({ of, head }) => /vacuum|hours/.test(head) || readings.some((one) => of(one) !== undefined),
  );
  const lines = readings.map((one) => used.map(({ of }) => cell(of(one))).join(","));
  return `${[used.map(({ head }) => head).join(","), ...lines].join("\n")}\n`;
}

function over(value: number | undefined, size: number): number | undefined {
  return value === undefined ? undefined : value / size;
}

/** Without the rounding that a change of unit brings; a text in quotes when it holds what would end a cell. */
function cell(value: number | string | undefined): string {
  if (value === undefined) return "";
  if (typeof value === "number") return String(Number(value.toPrecision(12)));
  return /[",\n\r]/.test(value) || value !== value.trim() ? `"${value.replaceAll('"', '""')}"` : value;
}
