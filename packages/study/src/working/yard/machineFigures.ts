import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import * as days from "../formulas/yardDays.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { changeTotal } from "./changeTotal.js";
import { allowed, daysTo } from "./limitSteps.js";
import type { MachineGiven } from "./MachineGiven.js";
import type { MeterTrack } from "./MeterTrack.js";
import { logRates } from "./rateSteps.js";
import { gaugeStep, type oldestFollowed } from "./restrictionSteps.js";

/** Figures of one machine of a yard. */
export function machineFigures(given: MachineGiven): FigureMaker[] {
  const { judged, entry, hours, distance } = given;
  const figure = figuresIn("When it is due");
  const limits = judged.elements.flatMap((element) => element.limits.map((limit) => ({ element, limit })));
  const due = (): Step | null => {
    const d = limits.flatMap(({ element, limit }) => daysTo(given, element, limit) ?? []);
    return entry.due && worked(days.firstDue, { d });
  };
  return [
    figure("days until it is due", due),
    ...limits.map(({ element, limit }) =>
      figure(`days to the limit of ${element.state.element.name} by ${limit.by}`, () => daysTo(given, element, limit)),
    ),
    ...limits.map(({ element, limit }) =>
      figure(`allowed for ${element.state.element.name} by ${limit.by}`, () => allowed(given, limit)),
    ),
    ...judged.elements.map(({ state }) =>
      figure(`running time of ${state.element.name}`, () => {
        const C = hours && changeTotal(given, state, hours);
        if (!hours || !C) return null;
        const run = worked(hours.formulas.since, { T: hours.at(given.on), C });
        const none = { name: "running time", value: 0, unit: "s", kind: "running time" } as const;
        return run.value < 0 ? inWords("none: its change is ahead of what the meter shows", none, [run]) : run;
      }),
    ),
    ...rates("use", hours).map(([name, make]) => figure(name, make)),
    ...rates("travel", distance).map(([name, make]) => figure(name, make)),
    figure("gauge", () => gaugeStep(given)),
    figure("chance of a limit before it is due", () => chance(given, due)),
  ];
}

function rates(of: "use" | "travel", meter: MeterTrack | null): [string, () => Step | null][] {
  if (!meter) return [];
  const { rate } = meter.meter;
  const told = logRates(of === "use" ? "hours" : "distance", meter.readings);
  return [
    [`rate of ${of}`, () => meter.rate],
    [`slowest rate of ${of}`, () => (rate.least === null ? null : told.least())],
    [`fastest rate of ${of}`, () => (rate.most === null ? null : told.most())],
  ];
}

/** How many draws come to a limit before the day it is due, or today where that is past. */
function chance(given: MachineGiven, due: () => Step | null): Step | null {
  const { entry, hours, lives, on } = given;
  const known = lives?.filter((life) => !Number.isNaN(life)) ?? [];
  const oldest = oldestOf(given);
  const when = due();
  const C = hours && oldest && changeTotal(given, oldest, hours);
  if (entry.chance === null || !hours || !C || !when) return null;
  const run = worked(hours.formulas.since, { T: hours.at(on + Math.max(0, when.value)), C });
  const before = known.filter((life) => life < run.value).length;
  const m = inWords(
    "counted: draws of `life` that end before the running time on that day",
    { name: "draws whose limit comes before", value: before, unit: "1", kind: "plain" },
    [run, when],
  );
  const n = inWords("counted", { name: "draws", value: known.length, unit: "1", kind: "plain" });
  return worked(days.drawsBefore, { m, n });
}

/** The element changed longest ago of all. */
function oldestOf({ judged }: MachineGiven): NonNullable<ReturnType<typeof oldestFollowed>> | null {
  const [first, ...rest] = judged.elements.map(({ state }) => state);
  return first === undefined
    ? null
    : rest.reduce((one, other) => ((other.running ?? Infinity) < (one.running ?? Infinity) ? other : one), first);
}
