import {
  type CurveAnswer,
  type CurvePoint,
  type CurveState,
  type QuantityKind,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";
import type { Answered } from "../commands/Answered.js";

/** Plain letters for units that a spreadsheet may show garbled. */
const PLAIN: Readonly<Record<string, string>> = { "°C": "degC", "°F": "degF" };

const STATES = ["clean", "now", "atChange"] as const;
const STATE_WORDS = { clean: "clean", now: "now", atChange: "at change" } as const;

/** Curves as comma-separated values, one line for each demand, in the units shown; a gap is an empty cell. */
export function curveCsv(answered: readonly Answered<CurveAnswer>[], units: UnitSystem): string {
  const rows = answered.flatMap(({ file, answer }) =>
    answer.points.flatMap((point) =>
      Array.from(point.demand, (_, at) => [cell(file), ...lineOf(point, at, units)].join(",")),
    ),
  );
  return `${[header(units), ...rows].join("\n")}\n`;
}

function header(units: UnitSystem): string {
  const named = (name: string, kind: QuantityKind) => `${name} (${symbol(kind, units)})`;
  const states = STATES.flatMap((state) =>
    ["", " low", " high"].flatMap((end) => [
      named(`vacuum ${STATE_WORDS[state]}${end}`, "vacuum"),
      named(`feed pressure ${STATE_WORDS[state]}${end}`, "pressure"),
    ]),
  );
  return ["file", named("temperature", "temperature"), named("demand", "flow"), ...states].join(",");
}

function lineOf(point: CurvePoint, at: number, units: UnitSystem): string[] {
  const states = STATES.flatMap((state) => stateCells(point[state], at, units));
  return [shown(point.temperature, "temperature", units), shown(point.demand[at], "flow", units), ...states];
}

function stateCells(state: CurveState | null, at: number, units: UnitSystem): string[] {
  const vacuum = state?.vacuum;
  const feed = state?.feedPressure ?? undefined;
  return [
    [vacuum?.middle, feed?.middle],
    [vacuum?.band?.low, feed?.band?.low],
    [vacuum?.band?.high, feed?.band?.high],
  ].flatMap(([one, other]) => [shown(one?.[at], "vacuum", units), shown(other?.[at], "pressure", units)]);
}

/** Six digits: more than any input is known to, and none lost in a chart. */
function shown(value: number | undefined, kind: QuantityKind, units: UnitSystem): string {
  if (value === undefined || !Number.isFinite(value)) return "";
  const { size, zero = 0 } = unitOf(kind, units);
  return String(Number(((value - zero) / size).toPrecision(6)));
}

function symbol(kind: QuantityKind, units: UnitSystem): string {
  const { symbol: own } = unitOf(kind, units);
  return PLAIN[own] ?? own;
}

/** A text as a cell: in quotes when it holds what would end one. */
function cell(text: string): string {
  return /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
