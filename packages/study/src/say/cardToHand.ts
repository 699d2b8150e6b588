import type { CardElement, CardFacts, CardItem } from "../card/CardAnswer.js";
import { byStyle, step, styleWords, volumeText } from "./cardItems.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import { sideWords } from "./sideWords.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** What to have at hand. */
export function cardToHand(facts: CardFacts, units: UnitSystem): CardItem[] {
  const { elements, pump } = facts;
  const [screens, filters] = [elements.filter(isScreen), elements.filter((one) => !isScreen(one))];
  const named = byStyle(filters).map(
    ({ style, names }) => `${names} (${style === null ? "style not stated" : styleWords[style]})`,
  );
  const fresh =
    named.length === 0
      ? []
      : [step(say`New, as the manual names ${filters.length > 1 ? "them" : "it"}, with seals: ${named.join("; ")}.`)];
  const cleaned = screens.map(({ name }) => step(say`New seal for ${name}, which is cleaned and used again.`));
  const gauge =
    pump === "none"
      ? say`A low-pressure gauge for the line at the engine.`
      : say`A vacuum gauge teed in ${sideWords(pump).inlet}${feedGauge(facts, units)}.`;
  return [
    ...fresh,
    ...cleaned,
    step(catching(facts, units)),
    step(say`Clean fuel for the seals, lint-free cloth, caps for open ends, the manual's torque figures.`),
    step(gauge),
  ];
}

function isScreen({ style }: CardElement): boolean {
  return style === "screen";
}

function feedGauge({ elements, readings, pump }: CardFacts, units: UnitSystem): Words {
  const feed = readings.at(-1)?.feed;
  if (!feed || !elements.some(({ side }) => side === "delivery")) return [];
  return say`, and a pressure gauge ${sideWords(pump).feed}, for ${quantity(feed.high, "pressure", units)}`;
}

/** How much fuel to catch. */
function catching({ volumes, elements }: CardFacts, units: UnitSystem): Words {
  const { bodies, lines, unknown } = volumes;
  const more =
    unknown.length === 0
      ? say``
      : say`, and besides what ${namesWords(unknown)} ${unknown.length > 1 ? "hold" : "holds"} (not in the file: measure it)`;
  const drained = say`${fig("lines", volumeText(lines, units))} should the lines beside run empty`;
  if (bodies + lines === 0) {
    return elements.every(({ style }) => style === "in-tank" || style === "screen")
      ? say`Tray for what drips; little runs out.`
      : say`Tray and can${more}.`;
  }
  if (bodies === 0) return say`Tray and can: ${drained}${more}.`;
  const both = lines > 0 ? say`, and ${drained}` : say``;
  return say`Tray and can: ${fig("bodies", volumeText(bodies, units))} from the ${unknown.length > 0 ? "bodies or bowls stated" : "bodies"}${both}${more}.`;
}
