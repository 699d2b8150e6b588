import { type CardAnswer, type CardItem, capital, cardTitle, plain } from "@thirstline/study";
import type { Answered } from "../commands/Answered.js";
import type { Paint } from "../io/paint.js";
import { cautionItems, fileCautionTexts } from "./cautionLines.js";
import { headingOf } from "./heading.js";
import { separated } from "./separated.js";
import { wrap } from "./wrap.js";

/** A job card as lines for people: cautions first, then the work in its order, with boxes to tick. */
export function cardText({ answer, fileCautions }: Answered<CardAnswer>, paint: Paint): string[] {
  const tone = answer.verdict === "card" ? "good" : "care";
  const sections = answer.sections.map(({ title, items, name }) => [
    paint(name === "cautions" ? "care" : "strong", title),
    ...items.flatMap(itemLines),
  ]);
  return [
    ...headingOf(answer.system, "JOB CARD", tone, paint),
    ...wrap(`${cardTitle(answer)}.`),
    "",
    ...separated([...sections, cautionItems(fileCautionTexts(fileCautions))]),
  ];
}

function itemLines({ kind, words }: CardItem): string[] {
  const text = capital(plain(words));
  switch (kind) {
    case "note":
      return inset(`- ${text}`, "  ");
    case "step":
      return inset(`[ ] ${text}`, "    ");
    case "field":
    case "line":
      return [`  ${text} `.padEnd(78, "_")];
  }
}

function inset(text: string, hang: string): string[] {
  return wrap(text, hang, 76).map((line) => `  ${line}`);
}
