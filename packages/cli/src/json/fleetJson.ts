import {
  type FleetAnswer,
  type FleetCaution,
  type FleetElement,
  type FleetEntry,
  type FleetPart,
  type FleetRate,
  fleetCautionWords,
  fleetReasonWords,
  plain,
} from "@thirstline/study";
import { figure } from "./figure.js";
import { reasonJson } from "./lifeJson.js";

const UNKNOWN = "not known";

/** An answer to `fleet` for programs: SI, every figure with its unit; days are whole days of the calendar. */
export function fleetJson({ question, on, within, entries, parts, unlisted }: FleetAnswer) {
  return { question, on, within: days(within), entries: entries.map(entryJson), parts: parts.map(partJson), unlisted };
}

function entryJson(entry: FleetEntry) {
  const { machine, system, stakes, group, due, change, elements, hours, distance, gauge, chance } = entry;
  return {
    machine,
    system,
    stakes,
    group,
    due: due && { ...due, days: days(due.days) },
    change,
    chance: figure(chance, "1", "nothing was drawn"),
    hours: hours && rateJson(hours, "s"),
    distance: distance && rateJson(distance, "m"),
    gauge: gauge && { date: gauge.date, value: figure(gauge.value, "Pa", UNKNOWN) },
    elements: elements.map(elementJson),
    reasons: entry.reasons.map((reason) => ({ ...reason, words: fleetReasonWords(reason) })),
    cautions: entry.cautions.map(cautionJson),
  };
}

function elementJson({ element, style, changed, running, limits }: FleetElement) {
  return {
    element,
    style,
    changed,
    running: figure(running, "s", UNKNOWN),
    limits: limits.map(({ by, date, latest, after }) => ({
      by,
      date,
      latest,
      after: figure(after, by === "distance" ? "m" : "s", "not counted by a meter"),
    })),
  };
}

/** A rate of use, per day of the calendar. */
function rateJson({ perDay, least, most, from }: FleetRate, unit: "s" | "m") {
  const rate = (value: number | null) =>
    figure(value === null ? null : value / DAY, `${unit}/s`, "the log is too short");
  return { rate: rate(perDay), least: rate(least), most: rate(most), from };
}

/** s */
const DAY = 24 * 3600;

function cautionJson(caution: FleetCaution) {
  const words = plain(fleetCautionWords(caution, "metric"));
  if (caution.code === "restriction not followed") {
    return { code: caution.code, reasons: caution.reasons.map(reasonJson), words };
  }
  if (!("value" in caution)) return { ...caution, words };
  const { code, value, limit } = caution;
  return { code, value: figure(value, "Pa", UNKNOWN), limit: figure(limit, "Pa", UNKNOWN), words };
}

function partJson({ delivery, ...part }: FleetPart) {
  return { ...part, delivery: figure(delivery, "s", "the shelf does not say") };
}

/** Whole days. */
function days(value: number) {
  return { value, unit: "d" };
}
