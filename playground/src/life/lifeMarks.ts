import { type LifeAnswer, quantity, type UnitSystem } from "@thirstline/study";
import type { Mark } from "../chart/ChartData.js";

/** Two moments closer than this share of the later are one, and said together. */
const TOGETHER = 0.004;

/** The moments of a life that count, at running times, s: the interval, the longest allowed, when to change, the limit met. */
export function lifeMarks({ interval, change, end }: LifeAnswer, units: UnitSystem): Mark[] {
  const moments: { time: number; words: string; limit: boolean }[] = [];
  if (change) moments.push({ time: change.time, words: changeWord(change.by), limit: false });
  if (interval) {
    moments.push({ time: interval.time, words: "usual interval", limit: false });
    if (interval.atMost > interval.time) moments.push({ time: interval.atMost, words: "at most", limit: false });
  }
  if (end) moments.push({ time: end.time, words: "limit met", limit: true });
  const joined: typeof moments = [];
  for (const one of moments.sort((a, b) => a.time - b.time)) {
    const last = joined.at(-1);
    if (last && one.time - last.time <= TOGETHER * one.time) {
      last.words += last.words.includes(one.words) ? "" : `, ${one.words}`;
      last.limit ||= one.limit;
    } else joined.push({ ...one });
  }
  return joined.map(({ time, words, limit }) => ({
    look: limit ? "ceiling" : "due",
    label: `${words}, ${quantity(time, "running time", units)}`,
    value: time,
  }));
}

function changeWord(by: NonNullable<LifeAnswer["change"]>["by"]): string {
  switch (by) {
    case "calendar":
      return "change, by the calendar";
    case "distance":
      return "change, by distance";
    default:
      return "change";
  }
}
