import type { CardFacts, CardItem } from "../card/CardAnswer.js";
import { note } from "./cardItems.js";
import { say } from "./words.js";

/** What another reading means; common practice, no source. */
export function cardOtherwise({ pump, fuel }: CardFacts): CardItem[] {
  if (pump === "none") {
    return [
      note(
        say`Less pressure: wrong element or one fitted backwards, hose kinked, cock half shut, tank vent shut, air locked in a high point.`,
      ),
      note(
        say`More pressure: tank fuller than counted, or an element missing or its seal not seated, so that fuel slips past.`,
      ),
    ];
  }
  const hot = fuel === "petrol" ? "; on a hot day, vapour" : "";
  return [
    note(
      say`Higher: wrong element or one fitted backwards, hose kinked or collapsed, cock half shut, tank vent shut, screen in the tank blocked; in the cold, wax or ice.`,
    ),
    note(say`Lower, with bubbles or hunting: air comes in before the gauge, at a seal, union or drain${hot}.`),
    note(say`Lower, without bubbles: load not reached, gauge off, or fuel slipping past a seal that is not seated.`),
    note(say`Swinging: air, or a lift pump that is worn.`),
  ];
}
