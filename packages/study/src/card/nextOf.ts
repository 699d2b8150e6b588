import type { System } from "@thirstline/spec/system";
import { changeRule } from "../life/changeRule.js";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import type { CardNext } from "./CardAnswer.js";

const HOUR = 3600;

/** When the next change is due: by `life`, or where that cannot be told by the manual's own rules alone. */
export function nextOf(system: System, life: LifeAnswer): CardNext {
  const { service, duty } = system;
  const year = duty ? duty.hoursADay * duty.daysAYear * HOUR : 0;
  // Without a year of duty a calendar time or a distance comes to no running time.
  const stated = service && year === 0 ? { interval: service.interval } : service;
  const alone = stated ? changeRule({ ...system, service: stated }, year, null) : null;
  return {
    change: life.change ? { time: life.change.time, by: life.change.by } : alone,
    distance: service?.distance ?? null,
    calendar: service?.calendar ?? null,
    source: service?.source ?? null,
  };
}
