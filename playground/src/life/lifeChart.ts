import { type CheckPoint, type LifeAnswer, quantity, sideWords, type UnitSystem, unitOf } from "@thirstline/study";
import type { ChartData, Mark } from "../chart/ChartData.js";
import { vacuumLimits } from "../chart/curveChart.js";
import { upTo } from "../chart/upTo.js";
import { lastShown } from "./lastShown.js";
import { lifeMarks } from "./lifeMarks.js";

/** Which gauge is followed. */
export type Gauge = "vacuum" | "feed";

/** The gauges that say something of a life: with no pump there is no vacuum to read, and not every pump tells a pressure. */
export function gaugesOf({ pump, trace }: LifeAnswer): Gauge[] {
  const feed: Gauge[] = trace.feed.some((one) => one !== null) ? ["feed"] : [];
  return pump === "none" ? feed : ["vacuum", ...feed];
}

/** The gauge whose limit is met first. */
export function decisiveGauge(answer: LifeAnswer): Gauge {
  const { end } = answer;
  const feed = end?.by.kind === "limit" && end.by.limit === "feed pressure";
  const gauges = gaugesOf(answer);
  return (feed || gauges[0] === "feed") && gauges.includes("feed") ? "feed" : "vacuum";
}

/** What a gauge reads at the worst point over running time, with limits, the moments that count and the spread of the end. */
export function lifeChart(answer: LifeAnswer, gauge: Gauge, point: CheckPoint, units: UnitSystem): ChartData {
  const { trace, end, spread, pump } = answer;
  const unit = unitOf(gauge === "feed" ? "pressure" : "vacuum", units);
  const hours = unitOf("running time", units);
  const to = lastShown(answer);
  const { times, values } = upToTime(trace.time, gauge === "feed" ? trace.feed : trace.vacuum, to);
  const shown = values.map((one) => (one === null || !Number.isFinite(one) ? null : one / unit.size));
  const horizontals: Mark[] =
    gauge === "feed"
      ? [{ look: "limit", label: "least it needs", value: point.feedLimit / unit.size }]
      : vacuumLimits(point.vacuumLimits, unit.size);
  const known = shown.filter((one) => one !== null);
  const words = sideWords(pump);
  const title = gauge === "feed" ? `Pressure ${words.feed}` : `Vacuum ${words.inlet}`;
  const limits = horizontals.map(({ value }) => value);
  return {
    title,
    file: "life",
    x: {
      label: "Running time",
      symbol: hours.symbol,
      values: times.map((one) => one / hours.size),
      from: 0,
      to: to / hours.size,
    },
    y: { label: title, symbol: unit.symbol, ...upTo(known, limits, gauge === "vacuum") },
    lines:
      known.length < 2
        ? []
        : [
            {
              look: "clean",
              label: "as it fills",
              named: false,
              values: shown,
              atRest: shown.at(-1) ?? null,
              band: null,
            },
          ],
    horizontals,
    uprights: lifeMarks(answer, units).map((mark) => ({ ...mark, value: mark.value / hours.size })),
    stretch:
      spread && spread.draws > 0 && spread.low < to
        ? {
            label: `8 draws of 10: ${quantity(spread.low, "running time", units)} and later`,
            from: spread.low / hours.size,
            to: spread.high / hours.size,
          }
        : null,
    dot: end && end.time <= to ? { x: end.time / hours.size, y: shown.at(-1) ?? Number.NaN } : null,
  };
}

/** The trace to a time, with what it reads then where that lies between two of its moments. */
function upToTime(times: readonly number[], values: readonly (number | null)[], to: number) {
  const last = times.findIndex((one) => one > to);
  if (last <= 0) return { times: [...times], values: [...values] };
  const [before = 0, after = 0] = [times[last - 1], times[last]];
  const [low, high] = [values[last - 1], values[last]];
  const known = typeof low === "number" && typeof high === "number";
  const there = known ? low + ((high - low) * (to - before)) / (after - before) : null;
  return { times: [...times.slice(0, last), to], values: [...values.slice(0, last), there] };
}
