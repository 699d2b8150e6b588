import type { CardFacts, CardItem } from "../card/CardAnswer.js";
import { note } from "./cardItems.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say } from "./words.js";

/** What can hurt, before any work begins. */
export function cardCautions(facts: CardFacts, units: UnitSystem): CardItem[] {
  const { fuel, relief, pump, verdict } = facts;
  const held =
    relief === null || pump === "none"
      ? say``
      : say` (behind the lift pump there may be ${fig("relief", quantity(relief, "pressure", units))})`;
  const own =
    fuel === "petrol"
      ? say`Petrol vapour is heavier than air, creeps along the floor and flashes: work in the open, battery off, no spark, no lamp that is not sealed. Let the engine go cold first.`
      : say`A jet from a high-pressure line pierces skin: keep hands away from injection lines. Skin that was hit goes to a surgeon at once, however small the mark.`;
  const nothing =
    verdict === "cannot say" ? [note(say`The file has no filter or screen: there is nothing to change.`)] : [];
  return [
    note(
      say`The machine's manual and local codes decide; where this card differs, the manual is right. Marine, aviation, road-tank and LPG work is for licensed people.`,
    ),
    note(say`Fuel burns: no flame, no smoking, extinguisher in reach, air the place. Stay off hot parts.`),
    note(own),
    note(say`Relieve pressure before a union is opened${held}: crack it slowly, under a rag, face away.`),
    note(
      say`Gloves and eye protection. Catch what runs out; fuel, rags and old elements go to proper disposal, none to drain, bilge or ground.`,
    ),
    ...nothing,
  ];
}
