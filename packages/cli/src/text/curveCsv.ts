import {
  type CurveAnswer,
  type CurvePoint,
  type CurveSpread,
  type CurveState,
  csvCell,
  type QuantityKind,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";
import type { Spread } from "../commands/Answered.js";

/** Plain letters for units that a spreadsheet may show garbled. */
const PLAIN: Readonly<Record<string, string>> = { "°C": "degC", "°F": "degF" };

const STATES = ["clean", "now", "atChange"] as const;
const STATE_WORDS = { clean: "clean", now: "now", atChange: "at change" } as const;

/**
 * Curves as comma-separated values, one line for each demand, in the units shown; a gap is an empty cell. Where a file's
 * spreads were drawn, four columns more have what 10 and 90 % of the draws stay below, with clean elements.
 */
export function curveCsv(answered: readonly Spread<CurveAnswer, CurveSpread>[], units: UnitSystem): string {
  const drawn = answered.some(({ spreads }) => spreads !== undefined);
  const rows = answered.flatMap(({ file, answer, spreads }) =>
    answer.points.flatMap((point, place) =>
      Array.from(point.demand, (_, at) => {
        const more = drawn ? spreadCells(spreads?.[place], at, units) : [];
        return [csvCell(file), ...lineOf(point, at, units), ...more].join(",");
      }),
    ),
  );
  return `${[header(units, drawn), ...rows].join("\n")}\n`;
}

function header(units: UnitSystem, drawn: boolean): string {
  const named = (name: string, kind: QuantityKind) => `${name} (${symbol(kind, units)})`;
  const pair = (after: string) => [named(`vacuum ${after}`, "vacuum"), named(`feed pressure ${after}`, "pressure")];
  const states = STATES.flatMap((state) => ["", " low", " high"].flatMap((end) => pair(`${STATE_WORDS[state]}${end}`)));
  const ends = drawn ? ["10 %", "90 %"].flatMap((end) => pair(`clean ${end} of draws`)) : [];
  return ["file", named("temperature", "temperature"), named("demand", "flow"), ...states, ...ends].join(",");
}

function spreadCells(spread: CurveSpread | undefined, at: number, units: UnitSystem): string[] {
  return (["low", "high"] as const).flatMap((end) => [
    shown(spread?.vacuum[end][at], "vacuum", units),
    shown(spread?.feedPressure?.[end][at], "pressure", units),
  ]);
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
