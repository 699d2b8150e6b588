import {
  changeWords,
  type LifeAnswer,
  lifeCautions,
  lifeSentence,
  partialWords,
  plain,
  protectionWords,
  spreadWords,
  type UnitSystem,
  waterWords,
} from "@thirstline/study";
import type { Answered } from "../commands/Answered.js";
import type { Paint, Tone } from "../io/paint.js";
import { cautionItems, fileCautionTexts } from "./cautionLines.js";
import { entryLines } from "./entries.js";
import { headingOf } from "./heading.js";
import { lifeEntries } from "./lifeEntries.js";
import { cleanlinessTable, elementTable } from "./lifeTables.js";
import { separated } from "./separated.js";
import { wrap } from "./wrap.js";

const tones: Readonly<Record<LifeAnswer["verdict"], Tone>> = { lasts: "good", early: "bad", "cannot say": "care" };

/** An answer to `life` as lines for people: the verdict in words, when to change, then every element, the fuel and its water. */
export function lifeText({ answer, fileCautions }: Answered<LifeAnswer>, units: UnitSystem, paint: Paint): string[] {
  const entries = lifeEntries(answer, units);
  const change = changeWords(answer, units);
  // What starves from the start in every draw needs no chance.
  const spread = answer.end?.time === 0 && answer.spread?.chance === 1 ? null : spreadWords(answer, units);
  const blocks = [
    wrap(plain(lifeSentence(answer, units))),
    entries.length === 0 ? [] : entryLines(entries),
    spread === null ? [] : wrap(plain(spread)),
    change === null ? [] : wrap(plain(change)),
    elementTable(answer, units, paint),
    listed(
      "Changing one alone, when the limit is met, and leaving the rest:",
      partialWords(answer, units).map(plain),
      paint,
    ),
    [...cleanlinessTable(answer, units, paint), ...protectionLines(answer)],
    listed("Water", answer.water === null ? [] : waterWords(answer.water, units).map(plain), paint),
    cautionItems([...fileCautionTexts(fileCautions), ...lifeCautions(answer, units)]),
  ];
  return [
    ...headingOf(answer.system, answer.verdict.toUpperCase(), tones[answer.verdict], paint),
    ...separated(blocks),
  ];
}

function protectionLines(answer: LifeAnswer): string[] {
  const words = protectionWords(answer);
  return words === null ? [] : wrap(plain(words), "", 78).map((line) => `  ${line}`);
}

function listed(title: string, items: readonly string[], paint: Paint): string[] {
  if (items.length === 0) return [];
  return [paint("strong", title), ...items.flatMap((item) => wrap(item, "  ", 78).map((line) => `  ${line}`))];
}
