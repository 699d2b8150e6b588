import type {
  CheckPoint,
  LifeSpread,
  StarvesBelow,
  SwapAnswer,
  SwapReason,
  SwapSide,
  YearlyCost,
} from "@thirstline/study";
import { band } from "./band.js";
import { figure } from "./figure.js";
import { remark } from "./remarks.js";

/** Unit of every amount. */
export const MONEY = "catalogue currency";

/** An answer to `swap` for programs: SI, every figure with its unit; money in the catalogue's own currency. */
export function swapJson(answer: SwapAnswer) {
  const { question, system, pump, at, verdict, fineness, asked, interval, broken } = answer;
  return {
    question,
    system,
    pump,
    at,
    with: answer.with,
    verdict,
    reasons: answer.reasons.map(reasonJson),
    fineness,
    asked,
    interval: interval && { time: figure(interval.time, "s", "not stated"), source: interval.source },
    now: sideJson(answer.now),
    changed: sideJson(answer.changed),
    broken,
  };
}

function sideJson(side: SwapSide) {
  const { spread } = side;
  const none = side.lifeKnown ? "no limit is met within ten years of duty" : "life not known";
  return {
    element: side.element,
    code: side.code,
    captureKnown: side.captureKnown,
    fillingUnknown: side.fillingUnknown,
    warm: pointJson(side.warm),
    cold: pointJson(side.cold),
    inHandAtChange: figure(side.inHandAtChange, "1", "life not known, or a limit comes first"),
    starves: belowJson(side.starves),
    lifeReasons: side.lifeReasons.map((one) => plainJson(one)),
    life: figure(side.life, "s", none),
    change: side.change && { time: figure(side.change.time, "s", "not known"), by: side.change.by },
    spread: spread && spreadJson(spread, none),
    cost: costJson(side.cost),
  };
}

/** How long elements last in many draws. */
export function spreadJson(spread: LifeSpread, none: string) {
  return {
    low: figure(spread.low, "s", none),
    middle: figure(spread.middle, "s", none),
    high: figure(spread.high, "s", none),
    chance: figure(spread.chance, "1", "not known"),
    chanceError: figure(spread.chanceError, "1", "not known"),
    draws: figure(spread.draws, "1", "not known"),
  };
}

function costJson({ changes, elements, labour, stoppages, total }: YearlyCost) {
  return {
    changes: figure(changes, "1", "not known how often"),
    elements: figure(elements, MONEY, "no price"),
    labour: figure(labour, MONEY, "no work or no rate stated"),
    stoppages: figure(stoppages, MONEY, "no cost of a stoppage stated, or no chance known"),
    total: figure(total, MONEY, "no price"),
  };
}

/** What matters of a check at one temperature. */
export function pointJson(point: CheckPoint) {
  return {
    temperature: figure(point.temperature, "K", "not known"),
    verdict: point.verdict,
    reasons: point.reasons.map(remark),
    vacuum: band(point.vacuum, "Pa", "shut"),
    feedPressure: band(point.feedPressure, "Pa", "not known for this pump, or shut"),
    binds: point.binds,
    inHand: band(point.inHand, "1", "demand does not touch the limit"),
  };
}

function belowJson({ code, temperature }: StarvesBelow) {
  return { code, temperature: figure(temperature, "K", "not known") };
}

function reasonJson(reason: SwapReason): Record<string, unknown> {
  if ("point" in reason) {
    const { point, ...rest } = reason;
    return { ...plainJson(rest), point: pointJson(point) };
  }
  return plainJson(reason);
}

/** Units of the figures that reasons carry. */
const units: Readonly<Record<string, string>> = {
  temperature: "K",
  time: "s",
  interval: "s",
  early: "s",
  late: "s",
  most: "m3/s",
  flow: "m3/s",
  size: "m",
};

/** Plain data with a unit to each of its figures: what has no other is a pure number. */
export function plainJson(given: object, own: Readonly<Record<string, string>> = units): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(given).map(([name, value]): [string, unknown] => {
      if (typeof value === "number") return [name, figure(value, own[name] ?? "1", "no bound")];
      if (Array.isArray(value)) return [name, value.map((one) => (isBlock(one) ? plainJson(one, own) : one))];
      return [name, isBlock(value) ? plainJson(value, own) : value];
    }),
  );
}

function isBlock(value: unknown): value is object {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
