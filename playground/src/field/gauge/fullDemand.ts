import type { System } from "@thirstline/spec/system";
import { check, type GaugeAnswer, type GaugeElement, type SideAnswer } from "@thirstline/study";
import { withSoil } from "../../life/soiledBy.js";

/** What a gauge reads at full demand, tanks low, by the resistance over clean of the element that goes first. */
export interface FullDemand {
  /** Pa */
  readonly at: (ratio: number) => number;
  /** what it may not pass, Pa; null where nothing is stated */
  readonly limit: number | null;
  /** the resistance at which it does; null where it never comes to it */
  readonly ratioAtLimit: number | null;
}

/** Resistances at which it is worked out; straight between, as a part's pressure is in its resistance. */
const RATIOS = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 7, 10, 15, 25, 50, 120];

/**
 * How a gauge's reading at full demand follows the soil: `check` with the elements of its side soiled in the proportions
 * that the gauge found, those of the other side as they are.
 */
export function fullDemand(
  system: System,
  { sides }: Pick<GaugeAnswer, "sides">,
  { side, demand }: SideAnswer,
  lead: GaugeElement,
  temperature: number,
): FullDemand {
  const full = demand * (check(system, { temperatures: [temperature] }).points[0]?.demand.total ?? 0);
  const pointAt = (ratio: number) => {
    const now = new Map(sides.flatMap((one) => one.elements.map((element) => [element.name, soilOf(one, element)])));
    const soilOfSide = (name: string) => now.get(name)?.(ratio);
    const soiled = withSoil(system, ({ name, restriction }) => soilOfSide(name) ?? restriction);
    return check(soiled, { temperatures: [temperature], demand: full }).points[0];
  };
  const soilOf =
    (one: SideAnswer, { ratio }: GaugeElement) =>
    (of: number) => {
      if (one.side !== side) return ratio.middle;
      const grown = lead.ratio.middle - 1;
      return grown < 1e-3 ? of : 1 + (of - 1) * ((ratio.middle - 1) / grown);
    };
  const points = RATIOS.map(pointAt);
  const values = points.map((point) => {
    const band = side === "delivery" ? point?.feedPressure : (point?.vacuumNow ?? point?.vacuum);
    return band?.middle ?? Number.NaN;
  });
  const limit = (side === "delivery" ? points[0]?.feedLimit : points[0]?.vacuumLimits.atChange) ?? null;
  return { at: (ratio) => between(RATIOS, values, ratio), limit, ratioAtLimit: ratioAt(limit, values) };
}

/** The first resistance at which the gauge comes to its limit, from below or from above. */
function ratioAt(limit: number | null, values: readonly number[]): number | null {
  if (limit === null) return null;
  const past = values.findIndex((value, at) => at > 0 && (value - limit) * ((values[0] ?? 0) - limit) <= 0);
  if (past < 0) return null;
  const [from, to] = [values[past - 1] as number, values[past] as number];
  const [low, high] = [RATIOS[past - 1] as number, RATIOS[past] as number];
  return low + ((high - low) * (limit - from)) / (to - from);
}

function between(x: readonly number[], y: readonly number[], at: number): number {
  const after = x.findIndex((one) => one >= at);
  if (after <= 0) return (after === 0 ? y[0] : y.at(-1)) as number;
  const [x0, x1] = [x[after - 1] as number, x[after] as number];
  const [y0, y1] = [y[after - 1] as number, y[after] as number];
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}
