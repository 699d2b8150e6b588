import { type CardAnswer, type CardReading, plain } from "@thirstline/study";
import { band } from "./band.js";
import { figure } from "./figure.js";
import { remark } from "./remarks.js";
import { plainJson } from "./swapJson.js";

/** Units of the figures a card carries. */
const units: Readonly<Record<string, string>> = {
  head: "m",
  body: "m3",
  bowl: "m3",
  bodies: "m3",
  lines: "m3",
  stroke: "m3",
  temperature: "K",
  size: "m",
  depth: "m",
  time: "s",
  every: "s",
  early: "s",
  late: "s",
};

/** A card for programs: its figures in SI, each with its unit, and its sections in words. */
export function cardJson(answer: CardAnswer) {
  const { question, system, pump, fuel, verdict, left, cock, bleed, duplex, priming, check, next } = answer;
  return {
    question,
    system,
    pump,
    fuel,
    verdict,
    temperature: figure(answer.temperature, "K", "not known"),
    elements: answer.elements.map(({ body, bowl, ...rest }) => ({
      ...plainJson(rest, units),
      body: figure(body, "m3", "not stated"),
      bowl: figure(bowl, "m3", "not stated"),
    })),
    left,
    cock,
    relief: figure(answer.relief, "Pa", "not known for this pump"),
    duplex: duplex && {
      first: duplex.first,
      through: duplex.through,
      opened: duplex.opened,
      verdict: duplex.verdict,
      vacuum: duplex.vacuum === null ? null : band(duplex.vacuum, "Pa", "shut"),
    },
    volumes: plainJson(answer.volumes, units),
    priming: {
      allowed: priming.allowed,
      forbidden: priming.forbidden,
      assumed: priming.assumed,
      saidAllowed: priming.saidAllowed,
      stroke: figure(priming.stroke, "m3", "not stated"),
      fill: figure(priming.fill, "1", "not known"),
      least: figure(priming.least, "m3", "not known"),
      most: figure(priming.most, "m3", "not known"),
      strokes: {
        least: figure(priming.strokes?.least ?? null, "1", "no stroke stated"),
        most: figure(priming.strokes?.most ?? null, "1", "no stroke stated"),
      },
      unknown: priming.unknown,
    },
    bleed,
    water: waterJson(answer.water),
    settling: plainJson(answer.settling, units),
    readings: answer.readings.map(readingJson),
    check: {
      verdict: check.verdict,
      reasons: check.reasons.map(remark),
      vacuumLimits: {
        clean: figure(check.vacuumLimits.clean, "Pa", "none given"),
        atChange: figure(check.vacuumLimits.atChange, "Pa", "none given"),
      },
      feedLimit: figure(check.feedLimit, "Pa", "none given"),
      limitAssumed: check.limitAssumed,
    },
    next: {
      time: figure(next.change?.time ?? null, "s", "not known"),
      by: next.change?.by ?? null,
      distance: figure(next.distance, "m", "not stated"),
      calendar: figure(next.calendar, "s", "not stated"),
      source: next.source,
    },
    sections: answer.sections.map(({ name, title, items }) => ({
      name,
      title,
      items: items.map(({ kind, words }) => ({ kind, text: plain(words) })),
    })),
  };
}

function readingJson({ load, demand, vacuum, feed }: CardReading) {
  return {
    load: figure(load, "1", "not known"),
    demand: figure(demand, "m3/s", "not known"),
    vacuum: band(vacuum, "Pa", "shut"),
    feedPressure: band(feed, "Pa", "not known for this pump"),
  };
}

function waterJson(water: CardAnswer["water"]) {
  if (water.code !== "stages") {
    return plainJson(water, { ...units, free: "kg/m3" });
  }
  const { code, season, temperature, stages } = water;
  return {
    code,
    season,
    temperature: figure(temperature, "K", "not known"),
    stages: stages.map(({ element, kind, every, why }) => ({
      element,
      kind,
      every: figure(every, "s", why ?? "not known"),
    })),
  };
}
