import type { CardFacts, CardItem, CardReading } from "../card/CardAnswer.js";
import { isGround } from "../check/ground.js";
import { bandText } from "./bandText.js";
import { step } from "./cardItems.js";
import { groundWords } from "./groundWords.js";
import { quantity } from "./quantity.js";
import { sideWords } from "./sideWords.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** The leak check, and what the gauge should read. */
export function cardStart(facts: CardFacts, units: UnitSystem): CardItem[] {
  const { pump, readings, elements } = facts;
  const leak =
    pump === "none"
      ? say`Cock open, engine off: dry paper under every joint. Then run, and look again.`
      : say`Run at idle and look. Behind the pump a leak drips: dry paper under every joint. Before it nothing drips, air is drawn in: look for bubbles in a clear hose before the pump, listen for hunting; prime lost after an hour stood is a leak.`;
  return [
    step(leak),
    ...doubts(facts, units).map(step),
    ...readings.map((one) => step(readingWords(one, facts, units))),
    ...(readings.length > 0 && elements.some(({ side }) => side === "delivery") && pump !== "none"
      ? [step(feedWords(facts, units))]
      : []),
    ...(readings.length > 0 ? [step(limitWords(facts, units))] : []),
  ];
}

/** Why a reading is no promise. */
function doubts({ check, temperature, readings }: CardFacts, units: UnitSystem): Words[] {
  const ground = check.reasons.filter(isGround);
  if (readings.length === 0) {
    const why = ground.flatMap((one) => groundWords(one, units));
    return [say`No reading can be told: ${why}. Mend that first.`];
  }
  const [first] = ground;
  const at = quantity(temperature, "temperature", units);
  if (first) return [say`At ${at} no reading is a promise: ${groundWords(first, units)}.`];
  return check.verdict === "starves"
    ? [say`At ${at} it starves at full load even when the change is well done: see thirstline check.`]
    : [];
}

function readingWords(reading: CardReading, facts: CardFacts, units: UnitSystem): Words {
  const { pump, temperature, left } = facts;
  const load =
    reading.load === 1 ? "full load" : `${quantity(reading.load, "ratio", "metric")} load (the least of the duty)`;
  const at = `At ${load}, ${quantity(temperature, "temperature", units)},`;
  const name = reading.load === 1 ? "vacuum full" : "vacuum idle";
  const clean = left.length > 0 ? "" : " clean";
  if (pump === "none") {
    const { low, middle, high } = reading.vacuum;
    const pressure = bandText({ low: -high, middle: -middle, high: -low }, "pressure", units);
    return say`${at} expect ${fig(name, pressure)}${clean} at the engine. Read: ______`;
  }
  return say`${at} expect ${fig(name, bandText(reading.vacuum, "vacuum", units))} of vacuum${clean} ${sideWords(pump).inlet}. Read: ______`;
}

/** A gauge before the pump sees nothing of an element behind it. */
function feedWords({ readings, check, pump }: CardFacts, units: UnitSystem): Words {
  const feed = readings.at(-1)?.feed ?? null;
  const where = sideWords(pump).feed;
  if (feed === null)
    return say`A vacuum gauge sees nothing of what stands behind the pump; the pressure ${where} does, and the manual has it.`;
  const least = check.feedLimit > 0 ? say`, at least ${quantity(check.feedLimit, "pressure", units)}` : say``;
  return say`Behind the pump the vacuum gauge sees nothing: at full load expect ${fig("feed pressure", bandText(feed, "pressure", units))} ${where}${least}. Read: ______`;
}

function limitWords({ check, pump, left }: CardFacts, units: UnitSystem): Words {
  const { clean, atChange } = check.vacuumLimits;
  const others = left.length > 0 ? " These count the elements left in as the file has them." : "";
  if (pump === "none")
    return say`Read when the tank is low, which is what these are for; a full one gives more.${others}`;
  const limits = [
    ...(clean === null ? [] : [say`${quantity(clean, "vacuum", units)} clean`]),
    ...(atChange === null ? [] : [say`${quantity(atChange, "vacuum", units)} at the change`]),
  ].flatMap((words, at) => (at === 0 ? words : say`, ${words}`));
  const assumed = check.limitAssumed ? ", by published guidance for one engine family: the file has none" : "";
  const most = limits.length === 0 ? say`The manual has the limit.` : say`Limit: ${limits}${assumed}.`;
  return say`${most} Tank low; a full one reads less.${others}`;
}
