import type { CardElement, CardFacts, CardItem } from "../card/CardAnswer.js";
import { byStyle, step } from "./cardItems.js";
import { namesWords } from "./namesWords.js";
import { say, type Words } from "./words.js";

/** Seat, prefill, arrow, seal, torque. */
export function cardFitting(facts: CardFacts): CardItem[] {
  const { elements } = facts;
  return [
    step(say`Wipe every seat clean: no old seal left, no scratch, no lint.`),
    ...prefillItems(facts),
    ...arrowItems(elements),
    ...byStyle(elements).map(({ style, names }) => step(onWords(style, names))),
    step(say`Torque as the manual says. Wipe dry, so that a leak shows.`),
  ];
}

function prefillItems({ priming, pump }: CardFacts): CardItem[] {
  const { allowed, forbidden, assumed, saidAllowed } = priming;
  const dry = pump === "none" ? "the head fills it" : "its air is primed out";
  const items: CardItem[] = [];
  if (assumed.length > 0) {
    items.push(
      step(
        say`Do not prefill ${namesWords(assumed)}: nothing here says the manual allows it, and many forbid it: what is poured in is not filtered. Fit dry; ${dry}.`,
      ),
    );
  }
  if (forbidden.length > 0) {
    const asked = saidAllowed ? ", whatever was asked" : "";
    items.push(
      step(say`Do not prefill ${namesWords(forbidden)}: the file says the manual forbids it${asked}. Fit dry; ${dry}.`),
    );
  }
  if (allowed.length > 0) {
    const by = saidAllowed ? "as was said" : "by the file";
    items.push(
      step(
        say`Prefill ${namesWords(allowed)} (the manual allows it, ${by}) through the dirty side only, the outer holes, with clean fuel; never down the middle, which is the clean side.`,
      ),
    );
  }
  return items;
}

/** Which way round each goes, by its neighbours; those with the same neighbours together. */
function arrowItems(elements: readonly CardElement[]): CardItem[] {
  const filters = elements.filter(({ style }) => style !== "screen");
  const firsts = filters.filter((one, at) => !filters.slice(0, at).some((before) => isBeside(one, before)));
  return firsts.map((first) => {
    const alike = filters.filter((one) => isBeside(first, one));
    const names = namesWords(alike.map(({ name }) => name));
    const wrong = first.reversed
      ? alike.length > 1
        ? " They are backwards now: turn them."
        : " It is backwards now: turn it."
      : "";
    return step(say`${names}: arrow along the flow, IN from ${first.from}, OUT to ${first.to}.${wrong}`);
  });
}

function isBeside(one: CardElement, other: CardElement): boolean {
  return one.from === other.from && one.to === other.to && one.reversed === other.reversed;
}

/** How one of a style goes on. */
function onWords(style: CardElement["style"], names: string): Words {
  switch (style) {
    case "spin-on":
      return say`${names}: new seal moistened with clean fuel; turn on by hand until it touches, then as the manual says.`;
    case "cartridge":
      return say`${names}: new seals moistened with clean fuel, spring and washers as they were; close evenly.`;
    case "in-line":
      return say`${names}: new clips; replace hose ends that are hard or cracked.`;
    case "bowl":
      return say`${names}: new seal moistened with clean fuel; bowl level, drain shut.`;
    case "in-tank":
      return say`${names}: push home; pick-up clear of the tank's floor, opening sealed, nothing dropped in.`;
    case "screen":
      return say`${names}: new seal moistened with clean fuel; gauze seated all round.`;
    case null:
      return say`${names}: new seal moistened with clean fuel; fit as the manual shows.`;
  }
}
