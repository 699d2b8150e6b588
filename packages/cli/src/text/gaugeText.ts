import {
  type GaugeAnswer,
  gaugeCautionWords,
  gaugeFinding,
  gaugeSentence,
  type HoursLeft,
  outlierWords,
  plain,
  quantity,
  type SideAnswer,
  type UnitSystem,
  withoutWords,
} from "@thirstline/study";
import type { Answered } from "../commands/Answered.js";
import type { Paint, Tone } from "../io/paint.js";
import { cautionItems, fileCautionTexts } from "./cautionLines.js";
import { costColumns } from "./costColumns.js";
import { type Entry, entryLines } from "./entries.js";
import { headingOf } from "./heading.js";
import { separated } from "./separated.js";
import { numbers, titledTable } from "./table.js";
import { wrap } from "./wrap.js";

const words: Readonly<Record<GaugeAnswer["verdict"], string>> = {
  filter: "THE FILTER",
  other: "NOT ONLY THE FILTER",
  "cannot tell": "CANNOT TELL YET",
};
const tones: Readonly<Record<GaugeAnswer["verdict"], Tone>> = { filter: "good", other: "bad", "cannot tell": "care" };

/** An answer to `gauge` as lines for people: the verdict, hours left, what else shows, then the elements and the laws. */
export function gaugeText({ answer, fileCautions }: Answered<GaugeAnswer>, units: UnitSystem, paint: Paint): string[] {
  const { system, verdict, sides, left } = answer;
  return [
    ...headingOf(system, words[verdict], tones[verdict], paint),
    ...separated([
      wrap(plain(gaugeSentence(answer, units))),
      left ? entryLines(leftEntries(answer, left, units)) : [],
      ...findingBlocks(answer, units, paint),
      outlierLines(answer, units, paint),
      ...sides.map((side) => elementTable(side, answer, units, paint)),
      lawLines(sides, paint),
      cautionItems([...fileCautionTexts(fileCautions), ...gaugeCautionWords(answer, units).map(plain)]),
    ]),
  ];
}

function leftEntries({ readings }: GaugeAnswer, left: HoursLeft, units: UnitSystem): Entry[] {
  const hours = (time: number) => quantity(time, "running time", units);
  const meter = left.hourMeter === null ? [] : [`hour meter ${hours(left.hourMeter)}`];
  return [
    {
      name: "Hours left",
      value: hours(left.middle),
      note: [`nine times in ten ${hours(left.low)} to ${hours(left.high)}`, ...meter].join(", "),
    },
    { name: "Readings", value: String(readings.used), note: `over ${hours(left.sinceStart)} of running` },
  ];
}

/** Soil alone needs no more words than the sentence above. */
function findingBlocks({ findings, pump }: GaugeAnswer, units: UnitSystem, paint: Paint): string[][] {
  return findings
    .filter(({ code }) => code !== "loading")
    .map((finding) => {
      const { shows, check } = gaugeFinding(finding, pump, units);
      const items = check.flatMap((one) => wrap(`- ${one}`, "  ", 76).map((line) => `  ${line}`));
      return [...wrap(plain(shows)), paint("strong", "Look at"), ...items];
    });
}

function outlierLines(answer: GaugeAnswer, units: UnitSystem, paint: Paint): string[] {
  if (answer.outliers.length === 0) return [];
  const without = withoutWords(answer, units);
  const items = [...answer.outliers.map((one) => outlierWords(one, units)), ...(without === null ? [] : [without])].map(
    plain,
  );
  return [
    paint("strong", "Stands off"),
    ...items.flatMap((one) => wrap(`- ${one}`, "  ", 76).map((line) => `  ${line}`)),
  ];
}

function elementTable(
  { side, elements }: SideAnswer,
  { pump, sides }: GaugeAnswer,
  units: UnitSystem,
  paint: Paint,
): string[] {
  if (elements.length === 0) return [];
  const place = side === "delivery" ? "Behind the pump" : "Before the pump";
  const title = pump === "none" || sides.length < 2 ? "Elements now" : place;
  return titledTable(
    [
      { name: title, unit: "", cells: elements.map(({ name }) => name), align: "left" },
      numbers(
        "resists",
        "x clean",
        elements.map(({ ratio }) => ratio.middle.toFixed(1)),
      ),
      numbers(
        "9 in 10",
        "x clean",
        elements.map(({ ratio }) => `${ratio.low.toFixed(1)} to ${ratio.high.toFixed(1)}`),
      ),
      ...costColumns(elements, "now", units),
      numbers(
        "of its",
        "room",
        elements.map(({ roomUsed }) => (roomUsed === null ? "" : quantity(roomUsed, "ratio", units))),
      ),
    ],
    paint,
  );
}

/** Laws that weigh less are not worth a line. */
const LEAST = 0.05;

function lawLines(sides: readonly SideAnswer[], paint: Paint): string[] {
  const lines = sides.flatMap(({ side, laws, trend, elements }) => {
    if (!trend || elements.length === 0) return [];
    const named = laws
      .filter(({ weight }) => weight >= LEAST)
      .map(({ law, weight }) => `${law} ${quantity(weight, "ratio", "metric")}`);
    const of = sides.length < 2 ? "" : side === "delivery" ? "Behind the pump: " : "Before the pump: ";
    return wrap(`${of}${named.join(", ")}`, "", 78).map((line) => `  ${line}`);
  });
  return lines.length === 0 ? [] : [paint("strong", "How restriction grows, by weight of the laws that fit"), ...lines];
}
