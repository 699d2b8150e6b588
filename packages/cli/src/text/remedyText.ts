import {
  figure,
  isWorthTheWork,
  limitName,
  moneyText,
  plain,
  quantity,
  type RemedyAnswer,
  type RemedyResult,
  remediesWords,
  remedySentence,
  type UnitSystem,
  unitOf,
  type Verdict,
} from "@thirstline/study";
import type { Answered } from "../commands/Answered.js";
import type { Paint, Tone } from "../io/paint.js";
import { cautionLines } from "./cautionLines.js";
import { headingOf } from "./heading.js";
import { separated } from "./separated.js";
import { type Column, tableLines } from "./table.js";
import { wrap } from "./wrap.js";

const tones: Readonly<Record<Verdict, Tone>> = { holds: "good", tight: "care", starves: "bad", "cannot say": "care" };

/** An answer to `remedy` as lines for people: what helps most, then every change by what it leaves in hand. */
export function remedyText(
  { answer, fileCautions }: Answered<RemedyAnswer>,
  units: UnitSystem,
  paint: Paint,
): string[] {
  const { single, pairs, now } = answer;
  const gained = single.filter((one) => isWorthTheWork(one, now));
  const rest = single.filter((one) => !gained.includes(one));
  const [header = "", ...rows] = tableLines(columnsOf([now, ...gained], units));
  return [
    ...headingOf(answer.system, answer.verdict.toUpperCase(), tones[answer.verdict], paint),
    ...separated([
      wrap(plain(remedySentence(answer, units))),
      [paint("strong", header), ...rows, ...footLines(answer, units)],
      pairLines(pairs, units),
      listed(
        "What buys nothing worth the work:",
        rest.map(({ changes }) => plain(remediesWords(changes, units))),
      ),
      cautionLines(fileCautions, [answer.worst], units),
    ]),
  ];
}

function columnsOf(results: readonly RemedyResult[], units: UnitSystem): Column[] {
  const priced = results.some(({ changes, cost }) => changes.length > 0 && cost !== null);
  const column = (name: string, unit: string, of: (one: RemedyResult) => string, align: Column["align"] = "right") => ({
    name,
    unit,
    cells: results.map(of),
    align,
  });
  return [
    column(
      "change",
      "",
      ({ changes }) => (changes.length === 0 ? "as it is" : changeCell(plain(remediesWords(changes, units)))),
      "left",
    ),
    column("then", "", ({ verdict }) => verdict, "left"),
    column("in hand", "", ({ inHand }) => quantity(inHand, "ratio", units)),
    column("ceiling", unitOf("flow", units).symbol, ({ ceiling }) =>
      ceiling === 0 ? "none" : figure(ceiling, "flow", units),
    ),
    ...(priced
      ? [column("costs", "", ({ changes, cost }) => (changes.length === 0 || cost === null ? "" : moneyText(cost)))]
      : []),
  ];
}

/** Two changes at once: what they leave in hand, and what they are. */
function pairLines(pairs: readonly RemedyResult[], units: UnitSystem): string[] {
  const lines = pairs.map(({ changes, inHand, verdict, cost }) => {
    const priced = cost === null ? "" : `, at ${moneyText(cost)}`;
    return `${plain(remediesWords(changes, units))}: ${verdict}, ${quantity(inHand, "ratio", units)} in hand${priced}`;
  });
  return listed("The best pairs:", lines);
}

/** A title with a line for each; nothing without any. */
function listed(title: string, texts: readonly string[]): string[] {
  if (texts.length === 0) return [];
  return [title, ...texts.flatMap((text) => wrap(`- ${text}`, "  ", 78).map((line) => `  ${line}`))];
}

/** No change takes more room than leaves the figures theirs. */
function changeCell(text: string): string {
  const letters = [...text];
  return letters.length > 44 ? `${letters.slice(0, 43).join("")}…` : text;
}

function footLines({ now, pump }: RemedyAnswer, units: UnitSystem): string[] {
  const at = quantity(now.temperature, "temperature", units);
  const text = `Each alone, at the temperature where it leaves least in hand. As it is, ${limitName(now.limit, pump)} binds at ${at}.`;
  return wrap(text, "", 78).map((line) => `  ${line}`);
}
