import {
  type Arrangement,
  chanceShort,
  figure,
  moneyText,
  plain,
  quantity,
  type SizeAnswer,
  sizeFailureText,
  sizeReasonWords,
  sizeSentence,
  stagesText,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";
import type { Answered } from "../commands/Answered.js";
import type { Paint, Tone } from "../io/paint.js";
import { cautionItems, fileCautionTexts } from "./cautionLines.js";
import { headingOf } from "./heading.js";
import { separated } from "./separated.js";
import { type Column, tableLines } from "./table.js";
import { cut, wrap } from "./wrap.js";

/** How an answer is to look. */
interface Look {
  readonly units: UnitSystem;
  readonly paint: Paint;
  readonly rows: number;
}

const tones: Readonly<Record<SizeAnswer["verdict"], Tone>> = { yes: "good", no: "bad", "cannot say": "care" };

/** An answer to `size` as lines for people: the best of each ranking, the list, and what the others fail by. */
export function sizeText({ answer, fileCautions }: Answered<SizeAnswer>, look: Look): string[] {
  const { units, paint } = look;
  const word = answer.verdict === "yes" ? `${answer.passing} MEET EVERY LIMIT` : answer.verdict.toUpperCase();
  return [
    ...headingOf(answer.system, word, tones[answer.verdict], paint),
    ...separated([
      wrap(plain(sizeSentence(answer, units))),
      answer.reasons.flatMap((reason) =>
        wrap(`- ${plain(sizeReasonWords(reason, units))}`, "  ", 78).map((line) => `  ${line}`),
      ),
      tableOf(answer, look),
      failedLines(answer, units),
      answer.verdict === "cannot say" ? [] : cautionItems([...fileCautionTexts(fileCautions), ...basisOf(answer)]),
    ]),
  ];
}

/** What a search rests on. */
function basisOf({ arrangements }: SizeAnswer): string[] {
  const drawn = arrangements.filter(({ spread }) => spread !== undefined);
  const stopped = drawn.some(({ stoppages }) => stoppages !== null);
  return [
    drawn.length === 0
      ? "every arrangement was judged at the likely figures of what is uncertain; check and life of the one you choose tell how sure that is"
      : `every arrangement was judged at the likely figures; the chance of starving before the interval comes of ${drawn[0]?.spread?.draws} draws of the ${drawn.length} that show it`,
    "the element the machine's manual names comes before any of these; to go finer or coarser, ask its maker",
    stopped
      ? "a cost holds elements of this side, their stated work and, where a chance is shown, stoppages at it; neither bodies nor hoses"
      : "a cost holds elements of this side and their stated work, neither bodies, hoses nor stoppages",
  ];
}

function tableOf(answer: SizeAnswer, { units, paint, rows }: Look): string[] {
  const { arrangements, best } = answer;
  if (arrangements.length === 0) return [];
  const firsts = [best.cost, best.vacuum, best.changes];
  const cheapest = arrangements.map((_, at) => at).slice(0, rows);
  // The best of the other rankings may be far down the list of costs.
  const shown = [...new Set([...cheapest, ...firsts.filter((at) => at !== null)])].sort((one, other) => one - other);
  const marks = shown.map((at) => {
    const names = ["cost", "vacuum", "changes"].filter((_, place) => firsts[place] === at);
    return names.length > 0 ? `best ${names.join(", ")}` : arrangements[at]?.pareto ? "*" : "";
  });
  const own = shown.map((at) => arrangements[at] as Arrangement);
  const [header = "", unit = "", ...lines] = tableLines(columnsOf(own, marks, units));
  const more = arrangements.length > shown.length ? ` ${answer.passing - shown.length} more meet every limit.` : "";
  const note = wrap(
    `* and the best: no other is better in cost, vacuum or changes and as good in the rest.${more}`,
    "",
    78,
  );
  return [paint("strong", header), unit, ...lines, ...note.map((line) => `  ${line}`)];
}

function columnsOf(own: readonly Arrangement[], marks: readonly string[], units: UnitSystem): Column[] {
  const column = (name: string, unit: string, cells: readonly string[], align: Column["align"] = "right") => ({
    name,
    unit,
    cells,
    align,
  });
  const drawn = own.some(({ spread }) => spread !== undefined);
  const bored = own.some(({ bore }) => bore !== null);
  return [
    column(
      "from the tank on",
      "",
      own.map(({ stages }) => cut(stagesText(stages), drawn ? 25 : 34)),
      "left",
    ),
    ...(bored
      ? [
          column(
            "bore",
            unitOf("bore", units).symbol,
            own.map(({ bore }) => (bore === null ? "" : figure(bore, "bore", units))),
          ),
        ]
      : []),
    column(
      "a year",
      "cost",
      own.map(({ yearlyCost }) => (yearlyCost === null ? "–" : moneyText(yearlyCost))),
    ),
    column(
      "vacuum",
      unitOf("vacuum", units).symbol,
      own.map(({ vacuum }) => figure(vacuum, "vacuum", units)),
    ),
    column(
      "changed",
      "a year",
      own.map(({ changesAYear }) => changesAYear.toFixed(0)),
    ),
    column(
      "code",
      "",
      own.map(({ code }) => code),
    ),
    ...(drawn
      ? [
          column(
            "starves",
            "in %",
            own.map(({ spread }) => (spread ? shortest(chanceShort(spread)) : "")),
          ),
        ]
      : []),
    column("", "", marks, "left"),
  ];
}

/** A chance in percent, as short as it gets: "under 0.5 %" is "<0.5". */
function shortest(chance: string): string {
  return chance
    .replace(/ %$/, "")
    .replace(/^under /, "<")
    .replace(/^over /, ">");
}

function failedLines({ failed, passing, candidates }: SizeAnswer, units: UnitSystem): string[] {
  if (failed.length === 0) return [];
  const head = `${candidates - passing} of ${candidates} fail, by what they meet first from the tank on:`;
  return [
    head,
    ...failed.flatMap(({ by, count, example }) => {
      const bore = example.bore === null ? "" : ` with ${quantity(example.bore, "bore", units)} lines`;
      const text = `${sizeFailureText(by)}, such as ${stagesText(example.stages)}${bore}`;
      const lines = wrap(text, "", 68);
      return lines.map((line, at) => `  ${at === 0 ? String(count).padStart(8) : " ".repeat(8)}  ${line}`);
    }),
  ];
}
