import type { CardFacts, CardItem } from "../card/CardAnswer.js";
import { step } from "./cardItems.js";
import { exactQuantity } from "./exactQuantity.js";
import { joined } from "./joined.js";
import { lifeReasonWords } from "./lifeReasonWords.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** Draining: how often, and how long to wait before. */
export function cardWater(facts: CardFacts, units: UnitSystem): CardItem[] {
  return [...intervalWords(facts, units), standWords(facts, units)].map(step);
}

function intervalWords({ water }: CardFacts, units: UnitSystem): Words[] {
  switch (water.code) {
    case "no water stated":
      return [
        say`How often to drain cannot be told: the file does not say how much water the fuel brings. Look every day at first.`,
      ];
    case "life not known":
      return [
        say`How often to drain cannot be told: ${joined(water.reasons.map((one) => lifeReasonWords(one, units)))}. Look every day at first.`,
      ];
    case "nothing free":
      return [
        say`At ${fig("coldest season", quantity(water.temperature, "temperature", units))}, the coldest of the duty, all stated water stays dissolved: nothing to drain. A dirty delivery changes that; look now and then.`,
      ];
    case "no separator":
      return [
        say`No stage is stated to keep water: ${fig("free", quantity(water.free, "solids", units))} of it goes on to the engine at ${quantity(water.temperature, "temperature", units)}. Drain the tank.`,
      ];
    case "stages":
      return stageWords(water, units);
  }
}

type Stages = Extract<CardFacts["water"], { code: "stages" }>;

function stageWords({ stages, season, temperature }: Stages, units: UnitSystem): Words[] {
  const at = `${season}, ${quantity(temperature, "temperature", units)}`;
  const alike = stages.filter((one, place) => !stages.slice(0, place).some((before) => isAlike(one, before)));
  return alike.map((one) => {
    const same = stages.filter((other) => isAlike(one, other)).map(({ element }) => element);
    const names = namesWords(same);
    const full = same.length > 1 ? "they are full" : "it is full";
    if (one.every === null) {
      return one.why === "none comes"
        ? say`${names}: no water comes there.`
        : one.kind === "bowl"
          ? say`${names}: how often to drain cannot be told, since the size of a bowl is not stated. Look every day at first.`
          : say`${names}: when water would shut that cannot be told.`;
    }
    const what = one.kind === "bowl" ? `draining of ${one.element}` : `shutting of ${one.element} by water`;
    const time = fig(what, quantity(one.every, "running time", units));
    // The rest is US Army TM 5-3805-263-14&P-3's, for one engine family.
    return one.kind === "bowl"
      ? say`Drain ${names} every ${time} at the latest, after 5 to 10 minutes at rest, until clean fuel comes: by then ${full} in the worst of the year (${at}).`
      : say`Change ${names} within ${time}: then water alone has shut it (${at}).`;
  });
}

function isAlike(one: Stages["stages"][number], other: Stages["stages"][number]): boolean {
  return one.kind === other.kind && one.every === other.every && one.why === other.why;
}

function standWords({ settling, temperature }: CardFacts, units: UnitSystem): Words {
  const at = quantity(temperature, "temperature", units);
  switch (settling.code) {
    case "may be ice":
      return say`At ${at} free water may be ice, which does not drain: drain tank and bowls when they are warm.`;
    case "not known":
      return say`Let a tank stand overnight before its water is drained.`;
    case "time": {
      const size = exactQuantity(settling.size, "particle size", units);
      const depth = quantity(settling.depth, "length", units);
      return say`Let a tank stand ${fig("settling", standingTime(settling.time, units))} before its water is drained: so long a drop of ${size} sinks through ${depth} at ${at}.`;
    }
  }
}

/** Minutes under an hour and a half, else hours. */
function standingTime(time: number, units: UnitSystem): string {
  return time < 5400 ? `${Math.ceil(time / 60)} min` : quantity(time, "running time", units);
}
