import { life as followLife, type LifeMoment } from "@thirstline/core";
import type { LifeScene } from "./lifeFacts.js";

/**
 * How a life stands after a running time, s: the moments of its trace lie where the duty changes, and a chart is read
 * between them. Past its end, the end.
 */
export function momentAfter({ facts, found }: LifeScene, time: number): LifeMoment | undefined {
  const [start] = found.moments;
  if (time <= 0) return start;
  // To the rounding of whoever reads the time off a chart.
  if (found.end && time >= found.end.time * (1 - 1e-9)) return found.end;
  return followLife({ ...facts.given, horizon: time }).moments.at(-1);
}
