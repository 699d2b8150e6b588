import type { System } from "@thirstline/spec/system";
import type { ChangeRule } from "./LifeAnswer.js";

/**
 * When to change, whichever comes first: the manual's interval, a distance, the calendar, or the restriction. Never longer
 * than the manual allows, however clean the elements are.
 *
 * @param system its service and duty
 * @param year running time of a year of duty, s
 * @param restricted running time until the first limit is met, s; null when none is
 */
export function changeRule(system: System, year: number, restricted: number | null): ChangeRule | null {
  const { service, duty } = system;
  const rules: ChangeRule[] = [];
  if (service) {
    rules.push({ time: service.interval, by: "manual's interval" });
    if (service.atMost !== undefined) rules.push({ time: service.atMost, by: "manual's longest interval" });
    if (service.distance !== undefined && duty?.distance) {
      rules.push({ time: (service.distance / duty.distance) * year, by: "distance" });
    }
    if (service.calendar !== undefined) rules.push({ time: (service.calendar / YEAR) * year, by: "calendar" });
  }
  if (restricted !== null) rules.push({ time: restricted, by: "restriction" });
  return rules.reduce<ChangeRule | null>((first, one) => (first === null || one.time < first.time ? one : first), null);
}

/** A calendar year of 365.25 days, s. */
const YEAR = 365.25 * 24 * 3600;
