import type { CardFacts, CardItem } from "../card/CardAnswer.js";
import { field, line, note } from "./cardItems.js";
import { ruleWords } from "./lifeWords.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** What to write down, and when the next change is due. */
export function cardLog(facts: CardFacts, units: UnitSystem): CardItem[] {
  const { system, elements, pump, next } = facts;
  const gauge = pump === "none" ? "Pressure" : "Vacuum";
  return [
    note(say`${system}: ${namesWords(elements.map(({ name }) => name))}`),
    field(say`Date`),
    field(next.distance === null ? say`Hours` : say`Hours, distance`),
    field(say`${gauge} before`),
    field(say`${gauge} clean`),
    line(say`Element fitted`),
    line(say`Found in the old one`),
    note(nextWords(facts, units)),
    field(say`Next due`),
    field(say`Done by`),
  ];
}

function nextWords({ next }: CardFacts, units: UnitSystem): Words {
  const { change, distance, calendar, source } = next;
  if (change === null) return say`When the next change is due the file does not say; the manual does.`;
  if (change.time === 0)
    return say`No interval can be told: it starves already with clean elements; see thirstline check.`;
  const when = fig("next change", quantity(change.time, "running time", units));
  const others = [
    ...(distance === null ? [] : [quantity(distance, "distance", units)]),
    ...(calendar === null ? [] : [calendarText(calendar)]),
  ];
  const first = others.length === 0 ? say`` : say`, or ${others.join(" or ")}, whichever comes first`;
  const by = source === null ? "" : `; manual's figures from: ${source}`;
  return say`Next change ${when} from now (${ruleWords[change.by]})${first}${by}.`;
}

/** A calendar time as a manual states it, s; a month is a twelfth of 365.25 days. */
function calendarText(time: number): string {
  const months = time / ((365.25 * 24 * 3600) / 12);
  return Math.abs(months - Math.round(months)) < 1e-6
    ? `${Math.round(months)} month${Math.round(months) === 1 ? "" : "s"}`
    : `${Math.round(time / (24 * 3600))} days`;
}
