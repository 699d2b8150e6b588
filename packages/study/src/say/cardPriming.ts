import type { CardFacts, CardItem } from "../card/CardAnswer.js";
import { step, volumeText } from "./cardItems.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** Getting the air out: how much of it, and where. */
export function cardPriming(facts: CardFacts, units: UnitSystem): CardItem[] {
  const { bleed, fuel, pump, cock } = facts;
  const open = cock === null ? "Open the cock" : `Open ${cock}`;
  const places = bleed.map((place, at) => `${at + 1} ${place}`).join(", ");
  const order =
    fuel === "petrol"
      ? say`Move fuel up until it comes without bubbles, from the tank on: ${places}. Petrol systems seldom have bleed screws; loosen no union near anything hot.`
      : say`Bleed from the tank on, each until fuel runs without bubbles, and shut it while it still runs: ${places}.`;
  const last =
    fuel === "diesel" && pump !== "none"
      ? [step(say`Injector unions last, and only as the manual says. Wipe up every drop.`)]
      : [step(say`Wipe up every drop before starting.`)];
  return [step(say`${open}, close the tank cap. ${airWords(facts, units)}`), step(order), ...last];
}

/** How much air there is to move, and by how many strokes. */
function airWords({ priming, pump }: CardFacts, units: UnitSystem): Words {
  const { least, most, stroke, strokes, fill, unknown } = priming;
  const more =
    unknown.length === 0 ? say`` : say`, more by what ${namesWords(unknown)} ${unknown.length > 1 ? "hold" : "holds"}`;
  const air =
    least === most || least === 0
      ? fig("most air", volumeText(most, units))
      : say`${fig("air", volumeText(least, units))} (${fig("most air", volumeText(most, units))} if lines ran empty)`;
  if (most === 0) {
    return unknown.length === 0
      ? say`Next to no air came in.`
      : say`How much air to move is not known: the file states no body for ${namesWords(unknown)}.`;
  }
  const first = least === 0 ? "up to " : "";
  if (pump === "none") return say`The head pushes the air out by itself: ${first}${air}${more}.`;
  if (strokes === null || stroke === null) {
    return say`Air to move with the primer: ${first}${air}${more}; the sweep of a stroke is not stated, so strokes are not counted.`;
  }
  const count =
    strokes.least === strokes.most || strokes.least === 0
      ? fig("most strokes", `${strokes.most}`)
      : say`${fig("strokes", `${strokes.least}`)} to ${fig("most strokes", `${strokes.most}`)}`;
  return say`Hand primer: ${first}${count} strokes for ${air} of air${more}, at ${volumeText(stroke, units)} a stroke and ${quantity(fill, "ratio", "metric")} of it moving (assumed).`;
}
