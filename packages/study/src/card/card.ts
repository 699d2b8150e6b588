import { InputError } from "@thirstline/core";
import { build, type System, type SystemPart } from "@thirstline/spec/system";
import type { CheckPoint } from "../check/CheckAnswer.js";
import { mapParts } from "../choose/mapParts.js";
import { life } from "../life/life.js";
import { cardSections } from "../say/cardSections.js";
import type { UnitSystem } from "../say/units.js";
import { bleedPoints } from "./bleedPoints.js";
import type { CardAnswer, CardFacts } from "./CardAnswer.js";
import { changeable, changedOf, elementOf } from "./changedOf.js";
import { duplexOf } from "./duplexOf.js";
import { burns } from "./endWord.js";
import { isCock } from "./isCock.js";
import { nextOf } from "./nextOf.js";
import { primingOf } from "./primingOf.js";
import { readingsOf } from "./readingsOf.js";
import { settlingFor } from "./settlingFor.js";
import { spotsOf } from "./spots.js";
import { volumesOf } from "./volumesOf.js";
import { waterFor } from "./waterFor.js";

/** What to go by besides what the file says. */
export interface CardOptions {
  /** which elements are changed, and screens cleaned, by name; all when left out */
  readonly at?: readonly string[];
  /** of the fuel on the day, K; the file's own when left out */
  readonly temperature?: number;
  /** that the manual allows elements to be filled before they are fitted; taken as forbidden when left out */
  readonly prefill?: "manual-allows";
  /** sweep of a stroke of the hand primer, m3; the file's own when left out */
  readonly primer?: number;
  /** metric when left out */
  readonly units?: UnitSystem;
}

/**
 * What do I do at the bench? The job card for changing elements: cautions, what to have at hand, the order of work, priming
 * and bleeding, water, the leak check, what the gauge should then read, and what to write down. Each section is a list of
 * lines in words; the figures behind them are in SI beside.
 *
 * Every step is common practice of the trade, no source, and the machine's manual comes before it. There is no torque on a
 * card: that is the manual's.
 *
 * @param system from a system file
 * @returns the card; "cannot say" for a system without an element
 * @throws InputError for a name that is no filter or screen of the system, or a figure out of range
 * @example
 * card(heron, { at: ["prefilter A"] }).sections[0].name // "cautions"
 */
export function card(system: System, options: CardOptions = {}): CardAnswer {
  const facts = factsOf(system, options);
  const units = options.units ?? "metric";
  return { ...facts, units, sections: cardSections(facts, units) };
}

function factsOf(system: System, options: CardOptions): CardFacts {
  const temperature = options.temperature ?? build(system).temperature;
  if (!(temperature > 0 && temperature < Infinity)) {
    throw new InputError("card", "temperature", "more than 0 K", temperature);
  }
  const all = changeable(system);
  const changed = changedOf(system, options.at ?? []);
  const elements = changed.map((spot) => elementOf(spot, all));
  const names = elements.map(({ name }) => name);
  const fitted = mapParts(system, (part) => (names.includes(part.name) ? fittedNew(part) : part));
  const { readings, full } = readingsOf(fitted, temperature);
  const lasts = life(fitted);
  const volumes = volumesOf(changed);
  const primer = options.primer ?? system.service?.primer ?? null;
  return {
    question: "card",
    system: system.name,
    pump: system.pump.kind,
    fuel: burns(system),
    temperature,
    verdict: elements.length === 0 ? "cannot say" : "card",
    elements,
    left: all.filter(({ part }) => part.part === "filter" && !names.includes(part.name)).map(({ part }) => part.name),
    cock: cockBefore(system, names),
    relief: system.pump.kind === "fixed" ? system.pump.relief : null,
    duplex: duplexOf(fitted, elements, temperature),
    volumes,
    priming: primingOf(elements, volumes, { stroke: primer, saidAllowed: options.prefill === "manual-allows" }),
    bleed: bleedPoints(system, changed),
    water: waterFor(fitted, lasts),
    settling: settlingFor(system, temperature),
    readings,
    check: judgedBy(full),
    next: nextOf(fitted, lasts),
  };
}

/** A part after the change: an element without its soil and the right way round. */
function fittedNew(part: SystemPart): SystemPart {
  if (part.part !== "filter") return part;
  const { restriction: _, ...clean } = part;
  return { ...clean, reversed: false };
}

function cockBefore(system: System, names: readonly string[]): string | null {
  const spots = spotsOf(system);
  const first = spots.findIndex(({ part }) => names.includes(part.name));
  return spots.slice(0, Math.max(0, first)).findLast(({ part }) => isCock(part))?.part.name ?? null;
}

function judgedBy({ verdict, reasons, vacuumLimits, feedLimit, cautions }: CheckPoint): CardFacts["check"] {
  const limitAssumed = cautions.some(({ code }) => code === "limit assumed");
  return { verdict, reasons, vacuumLimits, feedLimit, limitAssumed };
}
