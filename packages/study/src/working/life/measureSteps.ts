import { changeRule } from "../../life/changeRule.js";
import { measuresOf } from "../../life/measuresOf.js";
import * as formulas from "../formulas/duty.js";
import type { Step } from "../Step.js";
import { fromFile, fromSource, worked } from "../worked.js";
import { endOfLife } from "./endStep.js";
import type { LifeScene } from "./lifeFacts.js";
import { burnt, year } from "./yearSteps.js";

const TIME = { unit: "s", kind: "running time" } as const;
const WAY = { unit: "m", kind: "distance" } as const;

/** A running time in the other measures people go by, each by its name. */
export function measures(life: LifeScene, time: Step): Readonly<Record<string, () => Step | null>> {
  const { system, duty } = life.facts;
  const found = measuresOf(system, duty, life.found, time.value);
  const Y = year(life);
  const last = system.service?.last;
  const distance = () => {
    if (found.distance === null) return null;
    return worked(formulas.distanceRun, { D: yearsDistance(life), t: time, Y }, { value: found.distance });
  };
  return {
    "fuel burnt": () => burnt(life, time, found.burnt),
    "years of duty": () => worked(formulas.yearsOf, { t: time, Y }, { value: found.years }),
    distance,
    "hour meter": () => {
      if (found.hourMeter === null) return null;
      const h = fromFile("service.last.hours", {
        name: "hour meter at the last change",
        value: last?.hours ?? 0,
        ...TIME,
      });
      return worked(formulas.hourMeter, { h, t: time }, { value: found.hourMeter });
    },
    "distance meter": () => {
      const d = distance();
      if (found.distanceMeter === null || d === null) return null;
      const name = "distance meter at the last change";
      const s = fromFile("service.last.distance", { name, value: last?.distance ?? 0, ...WAY });
      return worked(formulas.distanceMeter, { s, d }, { value: found.distanceMeter });
    },
  };
}

function yearsDistance({ facts }: LifeScene): Step {
  return fromFile("duty.distance", { name: "distance in a year", value: facts.system.duty?.distance ?? 0, ...WAY });
}

/** The manual's usual interval, and the longest it allows. */
export function interval({ facts }: LifeScene, which: "usual" | "longest"): Step | null {
  const { service } = facts.system;
  if (!service) return null;
  const usual = fromFile("service.interval", { name: "service interval", value: service.interval, ...TIME });
  if (which === "usual") return usual;
  const { atMost } = service;
  return atMost === undefined
    ? { ...usual, name: "longest interval" }
    : fromFile("service.at most", { name: "longest interval", value: atMost, ...TIME });
}

/** When to change: the least of what the rules allow. */
export function change(life: LifeScene): Step | null {
  const { system, duty } = life.facts;
  const rule = changeRule(system, duty.year, life.found.end?.time ?? null);
  if (!rule) return null;
  const { service } = system;
  const Y = year(life);
  const rules: Step[] = [];
  for (const which of ["usual", "longest"] as const) {
    const step = interval(life, which);
    if (step) rules.push(step);
  }
  if (service?.distance !== undefined && system.duty?.distance) {
    const s = fromFile("service.distance", { name: "distance between changes", value: service.distance, ...WAY });
    rules.push(worked(formulas.changeByDistance, { s, D: yearsDistance(life), Y }));
  }
  if (service?.calendar !== undefined) {
    const c = fromFile("service.calendar", { name: "calendar time between changes", value: service.calendar, ...TIME });
    const a = fromSource("definition", { name: "calendar year of 365.25 days", value: 365.25 * 86400, ...TIME });
    rules.push(worked(formulas.changeByCalendar, { c, a, Y }));
  }
  const end = endOfLife(life);
  if (end) rules.push(end);
  return worked(formulas.firstRule, { t: rules }, { name: "change", value: rule.time });
}
