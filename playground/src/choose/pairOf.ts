import type { System } from "@thirstline/spec/system";
import { type CurvePoint, curve } from "@thirstline/study";

/** One line of a chart: a figure, Pa, at each demand, m3/s; gaps where nothing is known. */
interface PairLine {
  readonly demand: Float64Array;
  readonly value: Float64Array;
}

/** Two systems' curves in one frame. */
export interface Pair {
  /** vacuum at the pump's inlet, or the pressure at the engine where gravity feeds */
  readonly kind: "vacuum" | "pressure";
  readonly lines: readonly [PairLine, PairLine];
  readonly limits: readonly { readonly name: string; readonly value: number }[];
  /** the engine's own, m3/s */
  readonly demand: number;
}

/** Demands at which the curves are worked out. */
const POINTS = 41;

/** The curves of two systems with clean elements at a fuel temperature, K; null where nothing passes one of them. */
export function pairOf(before: System, after: System, temperature: number): Pair | null {
  const [first] = curve(before, { temperatures: [temperature], points: 2 }).points;
  const demand = first?.duty.demand ?? 0;
  // Far enough to see what 20 % in hand is.
  const options = { temperatures: [temperature], to: demand * 1.6, points: POINTS };
  const [one, other] = [curve(before, options), curve(after, options)];
  const kind = one.pump === "none" ? "pressure" : "vacuum";
  const [a, b] = [one.points[0], other.points[0]];
  const lines = [a, b].map((point) => point && lineOf(point, kind));
  const [left, right] = lines;
  if (!a || !left || !right) return null;
  const { clean, atChange } = a.vacuumLimits;
  const limits =
    kind === "pressure"
      ? [{ name: "least needed", value: a.feedLimit }]
      : [
          ...(clean === null ? [] : [{ name: "clean limit", value: clean }]),
          ...(atChange === null ? [] : [{ name: "limit at change", value: atChange }]),
        ];
  return { kind, lines: [left, right], limits, demand };
}

function lineOf({ demand, clean }: CurvePoint, kind: Pair["kind"]): PairLine | null {
  const column = kind === "vacuum" ? clean?.vacuum : clean?.feedPressure;
  return column ? { demand, value: column.middle } : null;
}
