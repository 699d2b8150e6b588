import type { GaugeReading } from "@thirstline/spec/system";
import { type GaugeAnswer, quantity, sideWords, type UnitSystem, unitOf, type Words } from "@thirstline/study";
import { ticksBetween } from "../../choose/plotScale.js";
import type { Course, CoursePoint } from "./Course.js";
import type { GaugePlot, Tick } from "./PlotData.js";
import { type Axis, dayOfDate, timescale } from "./timescale.js";

/** Whether points stand as they were read, or at full demand, each as far off the course as it was read. */
export type Shown = "as read" | "at full demand";

/** A gauge's course as it is drawn. */
export function gaugePlot(
  course: Course,
  readings: readonly GaugeReading[],
  { axis, shown, units, pump }: { axis: Axis; shown: Shown; units: UnitSystem; pump: GaugeAnswer["pump"] },
): GaugePlot {
  const kind = course.side === "delivery" ? "pressure" : "vacuum";
  const unit = unitOf(kind, units);
  const x = timescale(axis, course, readings);
  const { points, line, limit, crossing } = course;
  const full = shown === "at full demand" && line !== null;
  const spots = (values: readonly number[]) =>
    values.map((value, at) => ({ x: x(course.line?.time[at] ?? 0), y: value / unit.size }));
  const drawn = points.map((point, at) => ({
    x: x(point.time),
    y: (full ? (point.full ?? point.read) : point.read) / unit.size,
    off: point.off,
    words: wordsOf(point, at + 1, readings[point.row - 1], kind, units),
  }));
  const earlier = full
    ? []
    : course.earlier.flatMap(({ row, read }) => earlierSpot(readings[row - 1], read, axis, kind, units));
  const expected = full ? [] : points.map((one) => ({ x: x(one.time), y: one.expected / unit.size }));
  const met = crossing && {
    low: x(crossing.low),
    middle: x(crossing.middle),
    high: Number.isFinite(crossing.high) ? x(crossing.high) : null,
  };
  const showLimit =
    limit !== null && (full || points.some(({ read }) => kind === "vacuum" && read > 0.6 * limit))
      ? limit / unit.size
      : null;
  const all = [...earlier.map((one) => one.x), ...drawn.map((one) => one.x)];
  const [from, to] =
    full && line ? [x(line.time[0] ?? 0), x(line.time.at(-1) ?? 0)] : [Math.min(...all), Math.max(...all)];
  const values = [
    ...drawn.map(({ y }) => y),
    ...earlier.map(({ y }) => y),
    ...expected.map(({ y }) => y),
    ...(showLimit === null ? [] : [showLimit]),
  ];
  const most = Math.max(...values, ...(full && line ? line.middle.map((value) => value / unit.size) : []));
  const what = kind === "pressure" ? "Feed pressure" : `Vacuum ${sideWords(pump).inlet}`;
  return {
    title: full ? [`${what} at full demand and `, temperatureOf(course, units)] : [`${what}, as read`],
    x: { label: axis === "hours" ? "hour meter, h" : "day", from, to, ticks: ticksOf(axis, from, to) },
    y: { symbol: unit.symbol, from: Math.min(0, ...values), to: most * 1.12 || 1 },
    points: drawn,
    earlier,
    expected,
    line: full && line ? { low: spots(line.low), middle: spots(line.middle), high: spots(line.high) } : null,
    limit:
      showLimit === null
        ? null
        : { at: showLimit, name: kind === "pressure" ? "the least it needs" : "the limit at change" },
    crossing: full ? met : null,
  };
}

function earlierSpot(
  reading: GaugeReading | undefined,
  read: number,
  axis: Axis,
  kind: "vacuum" | "pressure",
  units: UnitSystem,
) {
  const place = axis === "hours" ? reading?.hours : reading?.date;
  if (reading === undefined || place === undefined) return [];
  const x = typeof place === "number" ? place / 3600 : dayOfDate(place);
  const words = [`${whenOf(reading, units)}: read ${quantity(read, kind, units)}; before the run that counts`];
  return [{ x, y: read / unitOf(kind, units).size, words }];
}

function whenOf({ hours, date = "" }: GaugeReading, units: UnitSystem): string {
  return hours === undefined ? date : quantity(hours, "running time", units);
}

/** Temperature of full demand: a figure of what is left, where anything is. */
function temperatureOf({ temperature, ofLimit }: Course, units: UnitSystem): Words[number] {
  const text = quantity(temperature, "temperature", units).replace(" ", "\u00a0");
  return ofLimit ? { figure: "temperature where the limit is met", of: "left", text } : text;
}

/** @param nth which of the readings that count it is, from 1, as workings name them */
function wordsOf(
  point: CoursePoint,
  nth: number,
  reading: GaugeReading | undefined,
  kind: "vacuum" | "pressure",
  units: UnitSystem,
): Words {
  const when = reading === undefined ? "" : whenOf(reading, units);
  const live = (figure: string, value: number) => ({
    figure: `${figure} at reading ${nth}`,
    text: quantity(value, kind, units),
  });
  const [read, fitted] = [live("pressure read", point.read), live("pressure reckoned", point.expected)];
  return [`${when}: read `, read, ", fitted ", fitted, point.off ? "; stands off" : ""];
}

/** Round hours, or days of the calendar a round number of days apart. */
function ticksOf(axis: Axis, from: number, to: number): Tick[] {
  const ticks = ticksBetween(from, to, 5);
  if (axis === "hours") return ticks.map((at) => ({ at, text: String(at) }));
  const format = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", timeZone: "UTC" });
  const days = [...new Set(ticks.map(Math.round))];
  return days.map((at) => ({ at, text: format.format(at * 864e5) }));
}
