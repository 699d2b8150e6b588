import type { GaugeReading } from "@thirstline/spec/system";

/** Readings with one more at its place in time: before the first that is later. */
export function putIn(readings: readonly GaugeReading[], one: GaugeReading): GaugeReading[] {
  const later = readings.findIndex((other) => isLater(other, one));
  const at = later < 0 ? readings.length : later;
  return [...readings.slice(0, at), one, ...readings.slice(at)].map((reading, place) => ({
    ...reading,
    row: place + 1,
  }));
}

function isLater(other: GaugeReading, one: GaugeReading): boolean {
  if (other.hours !== undefined && one.hours !== undefined) return other.hours > one.hours;
  return other.date !== undefined && one.date !== undefined && other.date > one.date;
}
