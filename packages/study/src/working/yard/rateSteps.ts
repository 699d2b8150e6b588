import { dateOf } from "../../fleet/day.js";
import { LOOKED_BACK, type MeterReading, STRETCH } from "../../fleet/Meter.js";
import { distance, hours } from "../formulas/yard.js";
import type { Step } from "../Step.js";
import { fromSource, inWords, worked } from "../worked.js";
import { DAY } from "./MeterTrack.js";

const formulas = { hours, distance };

interface Gained {
  readonly g: Step;
  readonly n: Step;
}

/** How fast a meter ran over the last year of the log, with its slowest and fastest stretch. */
export function logRates(of: "hours" | "distance", readings: readonly MeterReading[]) {
  const all = gains(of, readings);
  const rate = (some: readonly Gained[]) =>
    worked(formulas[of].rate, { g: some.map(({ g }) => g), n: some.map(({ n }) => n), D: DAY });
  const each = () => stretches(all).map(rate);
  return {
    rate: () => rate(all),
    least: () => worked(formulas[of].slowest, { r: each() }),
    most: () => worked(formulas[of].fastest, { r: each() }),
  };
}

/** The same by what the file says of a year. */
export function dutyRate(of: "hours" | "distance", Y: Step): Step {
  const a = fromSource("definition", {
    name: "calendar year of 365.25 days",
    value: 365.25 * 86400,
    unit: "s",
    kind: "running time",
  });
  return worked(formulas[of].duty, { Y, a });
}

function gains(of: "hours" | "distance", readings: readonly MeterReading[]): Gained[] {
  const from = (readings.at(-1)?.day ?? 0) - LOOKED_BACK;
  const seen = readings.filter(({ day }) => day >= from);
  return seen.flatMap((one, at): Gained[] => {
    const before = seen[at - 1];
    if (before === undefined || one.isNew) return [];
    const days = { name: "days between the rows", value: one.day - before.day, unit: "d" };
    const [a, b] = [shown(of, before), shown(of, one)];
    return [{ g: worked(formulas[of].gain, { a, b }), n: inWords("counted on the calendar", days) }];
  });
}

function shown(of: "hours" | "distance", { day, value }: MeterReading): Step {
  const plain =
    of === "hours"
      ? ({ name: "hour meter", unit: "s", kind: "running time" } as const)
      : ({ name: "distance meter", unit: "m", kind: "distance" } as const);
  return inWords(`read on ${dateOf(day)}, by the log or the list of machines`, { ...plain, value });
}

function stretches(all: readonly Gained[]): Gained[][] {
  const whole: Gained[][] = [];
  let open: Gained[] = [];
  for (const one of all) {
    open.push(one);
    if (open.reduce((sum, { n }) => sum + n.value, 0) < STRETCH) continue;
    whole.push(open);
    open = [];
  }
  return whole;
}
