import type { Instant } from "../../gauge/Instant.js";
import { timeByDays, timeByMeter, turnedPressure } from "../formulas/gauge.js";
import { yearOf } from "../life/yearSteps.js";
import type { Step } from "../Step.js";
import { fromSource, inWords, worked } from "../worked.js";
import { DAY } from "../yard/MeterTrack.js";
import type { FitScene } from "./FitScene.js";

const TIME = { unit: "s", kind: "running time" } as const;
const MILLISECONDS_A_DAY = 86_400_000;

/** Where a reading was noted, in words. */
export function notedIn({ reading: { row, line } }: Instant): string {
  return `noted: reading ${row}${line === null ? "" : `, line ${line} of the readings`}`;
}

/** What a gauge showed, as it was noted. */
export function readingAsNoted({ side }: FitScene, instant: Instant): Step {
  const { vacuum, feedPressure } = instant.reading;
  const isVacuum = side === "suction" && vacuum !== undefined;
  return inWords(notedIn(instant), {
    name: isVacuum ? "vacuum read" : "feed pressure read",
    value: isVacuum ? vacuum : (feedPressure ?? Number.NaN),
    unit: "Pa",
    kind: isVacuum ? "vacuum" : "pressure",
  });
}

/** The same so turned that soil makes it grow. */
export function readingStep(fit: FitScene, instant: Instant): Step {
  return fit.step(`read ${instant.reading.row}`, () => {
    const noted = readingAsNoted(fit, instant);
    return noted.kind === "vacuum" ? noted : worked(turnedPressure, { p: noted }, { name: "what was read" });
  });
}

/** Running time of a reading since its run began. */
export function timeStep(fit: FitScene, instant: Instant): Step {
  return fit.step(`time ${instant.reading.row}`, () => {
    const { given, facts } = fit;
    const { meter } = facts.run;
    const name = `running time at reading ${instant.reading.row}`;
    if (meter !== null) {
      const h = inWords(notedIn(instant), { name: "hour meter", value: instant.reading.hours ?? Number.NaN, ...TIME });
      return worked(timeByMeter, { h, b: meterAtStart(fit, meter) }, { name });
    }
    const Y = yearOf(given.system);
    const a = fromSource("definition", { name: "calendar year of 365.25 days", value: 365.25 * 86400, ...TIME });
    const days = (instant.time * a.value) / Y.value / DAY.value;
    const from = Date.parse(instant.reading.date ?? "") / MILLISECONDS_A_DAY - days;
    const n = inWords("counted on the calendar", {
      name: `days since ${new Date(Math.round(from) * MILLISECONDS_A_DAY).toISOString().slice(0, 10)}`,
      value: Math.round(days),
      unit: "d",
    });
    return worked(timeByDays, { n, D: DAY, Y, a }, { name });
  });
}

/** What the hour meter showed when the run began. */
export function meterAtStart({ facts }: FitScene, value: number): Step {
  const { start } = facts.run;
  const by = start.known ? start.by : "not known";
  const words = {
    "change in the readings": "at the change that the readings note",
    "last change": "at the last change, as the file states it",
    stated: "at the first reading",
    "not known": "at the first reading, since nothing is known of a change",
  }[by];
  return inWords(words, { name: "hour meter when the run began", value, ...TIME });
}

/** Running time from which soil is followed: the change, or the first reading where nothing is known of one. */
export function startStep(fit: FitScene): Step {
  const [first] = fit.instants;
  if (!fit.weighed.run.start.known && first) return timeStep(fit, first);
  return inWords("the run begins there", { name: "running time at the beginning", value: 0, ...TIME });
}
