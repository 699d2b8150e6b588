import type { Arrangement } from "../../choose/sizing/SizeAnswer.js";
import * as formulas from "../formulas/yearCost.js";
import { yearOf } from "../life/yearSteps.js";
import type { Step } from "../Step.js";
import { asked, fromFile, fromSource, inWords, worked } from "../worked.js";
import { hour, hourlyRate, priceOf, workOf } from "./prices.js";
import type { SizeGiven } from "./SizeGiven.js";

const TIME = { unit: "s", kind: "running time" } as const;

/** The interval that was asked for, or the manual's. */
export function intervalAsked({ file, answer }: SizeGiven): Step | null {
  const { interval } = answer.asked;
  if (interval === null) return null;
  const plain = { name: "interval kept to", value: interval, ...TIME };
  return interval === file.service?.interval ? fromFile("service.interval", plain) : asked("interval", plain);
}

/** How often all elements are changed in a year of duty. */
export function setsAYear(given: SizeGiven): Step {
  const { duty, service } = given.file;
  const [Y, t] = [yearOf(given.file), intervalAsked(given)];
  const c = t ? [worked(formulas.changesAYear, { Y, t }, { name: "changes in a year by the interval" })] : [];
  if (duty?.distance && service?.distance) {
    const distance = (path: string, name: string, value: number) =>
      fromFile(path, { name, value, unit: "m", kind: "distance" });
    const D = distance("duty.distance", "distance in a year", duty.distance);
    c.push(
      worked(formulas.changesByDistance, {
        D,
        s: distance("service.distance", "distance between changes", service.distance),
      }),
    );
  }
  if (service?.calendar) {
    const a = { name: "calendar year of 365.25 days", value: 365.25 * 24 * 3600, ...TIME };
    const own = { name: "calendar time between changes", value: service.calendar, ...TIME };
    c.push(
      worked(formulas.changesByCalendar, {
        a: fromSource("exact by definition", a),
        t: fromFile("service.calendar", own),
      }),
    );
  }
  return worked(formulas.setsAYear, { c });
}

/** What an arrangement costs in a year; null where a price is not known. */
export function arrangementCost(
  given: SizeGiven,
  { stages }: Arrangement,
  { n, stoppages }: { readonly n: readonly Step[]; readonly stoppages: Step | null },
): Step | null {
  const k = stages.flatMap(({ element }) => {
    const found = given.elements.find(({ name }) => name === element);
    const p = found && priceOf(found);
    if (!found || !p) return [];
    const name = `one of ${element} with its work`;
    const [w, r] = [workOf(found), hourlyRate(given.options)];
    if (w && r) return worked(formulas.elementWithWork, { p, w, h: hour, r }, { name });
    return inWords("no work counted, where none or no cost of it is stated", { ...p, name, kind: "plain" }, [p]);
  });
  if (k.length < stages.length) return null;
  const own = worked(formulas.arrangementYear, { c: setsAYear(given), n, k });
  return stoppages ? worked(formulas.yearTotal, { m: [own, stoppages] }) : own;
}
