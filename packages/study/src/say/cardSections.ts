import type { CardFacts, CardItem, CardSection, CardSectionName } from "../card/CardAnswer.js";
import { cardCautions } from "./cardCautions.js";
import { cardFitting } from "./cardFitting.js";
import { cardLog } from "./cardLog.js";
import { cardOtherwise } from "./cardOtherwise.js";
import { cardPriming } from "./cardPriming.js";
import { cardStart } from "./cardStart.js";
import { cardTakingOff } from "./cardTakingOff.js";
import { cardToHand } from "./cardToHand.js";
import { cardWater } from "./cardWater.js";
import type { UnitSystem } from "./units.js";

/** What each section is called. */
const titles: Readonly<Record<CardSectionName, string>> = {
  cautions: "Before anything else",
  "at hand": "Have at hand",
  "take off": "Take off",
  fit: "Fit",
  prime: "Prime and bleed",
  water: "Water",
  start: "Start and check",
  otherwise: "If it reads otherwise",
  log: "Write in the log",
};

/** A card in words: cautions first, always; then the work in its order. A system without an element has cautions only. */
export function cardSections(facts: CardFacts, units: UnitSystem): CardSection[] {
  const section = (name: CardSectionName, items: readonly CardItem[]): CardSection => ({
    name,
    title: titles[name],
    items,
  });
  const cautions = section("cautions", cardCautions(facts, units));
  if (facts.verdict === "cannot say") return [cautions];
  return [
    cautions,
    section("at hand", cardToHand(facts, units)),
    section("take off", cardTakingOff(facts, units)),
    section("fit", cardFitting(facts)),
    section("prime", cardPriming(facts, units)),
    section("water", cardWater(facts, units)),
    section("start", cardStart(facts, units)),
    section("otherwise", cardOtherwise(facts)),
    section("log", cardLog(facts, units)),
  ];
}
