import {
  plain,
  type SwapAnswer,
  type SwapReason,
  type SwapRow,
  type SwapVerdict,
  swapReasonWords,
  swapRows,
  swapSentence,
  type UnitSystem,
  type Weight,
} from "@thirstline/study";
import type { Answered } from "../commands/Answered.js";
import type { Paint, Tone } from "../io/paint.js";
import { cautionItems, fileCautionTexts } from "./cautionLines.js";
import { headingOf } from "./heading.js";
import { separated } from "./separated.js";
import { tableLines } from "./table.js";
import { wrap } from "./wrap.js";

const tones: Readonly<Record<SwapVerdict, Tone>> = {
  yes: "good",
  "with care": "care",
  no: "bad",
  "cannot say": "care",
};

/** What stands before a reason of each weight. */
const words: Readonly<Record<Weight, string>> = { no: "No", "cannot say": "Not known", care: "Care", note: "Note" };

/** An answer to `swap` as lines for people: the verdict, both sides beside each other, then why. */
export function swapText({ answer, fileCautions }: Answered<SwapAnswer>, units: UnitSystem, paint: Paint): string[] {
  const [header = "", ...rows] = tableLines(columnsOf(answer, units));
  return [
    ...headingOf(answer.system, answer.verdict.toUpperCase(), tones[answer.verdict], paint),
    ...separated([
      wrap(plain(swapSentence(answer, units))),
      [paint("strong", header), ...rows],
      ["Why", ...answer.reasons.flatMap((reason) => reasonLines(reason, answer, units))],
      cautionItems(fileCautionTexts(fileCautions)),
    ]),
  ];
}

function reasonLines(reason: SwapReason, answer: SwapAnswer, units: UnitSystem): string[] {
  const head = `${words[reason.weight]}:`.padEnd(11);
  const lines = wrap(plain(swapReasonWords(reason, answer, units)), "", 80 - 2 - head.length);
  return lines.map((line, at) => `  ${at === 0 ? head : " ".repeat(head.length)}${line}`);
}

function columnsOf(answer: SwapAnswer, units: UnitSystem) {
  const rows = swapRows(answer, units);
  const column = (name: string, of: (row: SwapRow) => string, align: "left" | "right") => ({
    name,
    unit: "",
    cells: rows.map((row) => of(row) || "–"),
    align,
  });
  return [
    column("", ({ name }) => name, "left"),
    column("now", ({ now }) => plain(now), "right"),
    column("then", ({ changed }) => plain(changed), "right"),
  ];
}
