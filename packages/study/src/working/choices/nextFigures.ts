import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import { partDemand } from "../formulas/bench.js";
import * as formulas from "../formulas/duty.js";
import { yearOf } from "../life/yearSteps.js";
import type { Step } from "../Step.js";
import { fromFile, fromSource, inWords, worked } from "../worked.js";
import type { CardGiven } from "./CardGiven.js";
import { figureStep } from "./leastInHand.js";

const TIME = { unit: "s", kind: "running time" } as const;
const WAY = { unit: "m", kind: "distance" } as const;

/** Loads the gauge is read at, and when the next change is due. */
export function nextFigures(given: CardGiven): FigureMaker[] {
  const { system, fitted, answer, temperature } = given;
  const { service } = system;
  const figure = figuresIn("After the change");
  const ratio = { name: "load over full load", unit: "1", kind: "ratio" } as const;
  const lowest = () => {
    const value = Math.min(1, ...(system.duty?.loads ?? []).map(({ load }) => load));
    const at = system.duty?.loads?.findIndex(({ load }) => load === value) ?? -1;
    return at < 0 ? null : fromFile(`duty.loads[${at}].load`, { ...ratio, value });
  };
  return [
    figure("lowest load", lowest),
    figure("full load", () => inWords("as the burn is stated", { ...ratio, value: 1 })),
    figure("demand at the lowest load", () => {
      const [l, Q] = [lowest(), figureStep(fitted, "demand", { temperature })];
      return l && Q && worked(partDemand, { l, Q });
    }),
    figure("next change", () => figureStep(fitted, "change") ?? byRules(given)),
    figure("service distance", () =>
      service?.distance === undefined
        ? null
        : fromFile("service.distance", distance("service distance", service.distance)),
    ),
    figure("calendar time between changes", () =>
      service?.calendar === undefined
        ? null
        : fromFile("service.calendar", { name: "calendar time", value: service.calendar, ...TIME }),
    ),
    figure("temperature on the day", () =>
      figureStep(
        fitted,
        "temperature",
        given.options.temperature === undefined ? {} : { temperature: answer.temperature },
      ),
    ),
  ];
}

function distance(name: string, value: number) {
  return { name, value, ...WAY };
}

/** By the manual's own rules, where a life cannot be told. */
function byRules({ system }: CardGiven): Step | null {
  const { service, duty } = system;
  if (!service) return null;
  const t = [fromFile("service.interval", { name: "service interval", value: service.interval, ...TIME })];
  if (duty && duty.hoursADay * duty.daysAYear > 0) {
    const Y = yearOf(system);
    if (service.atMost !== undefined) {
      t.push(fromFile("service.at most", { name: "longest interval", value: service.atMost, ...TIME }));
    }
    if (service.distance !== undefined && duty.distance) {
      const s = fromFile("service.distance", distance("distance between changes", service.distance));
      const D = fromFile("duty.distance", distance("distance in a year", duty.distance));
      t.push(worked(formulas.changeByDistance, { s, D, Y }));
    }
    if (service.calendar !== undefined) {
      const c = fromFile("service.calendar", {
        name: "calendar time between changes",
        value: service.calendar,
        ...TIME,
      });
      const a = fromSource("definition", { name: "calendar year of 365.25 days", value: 365.25 * 86400, ...TIME });
      t.push(worked(formulas.changeByCalendar, { c, a, Y }));
    }
  }
  return worked(formulas.firstRule, { t });
}
