import {
  bandFigure,
  chanceText,
  moneyText,
  quantity,
  type StarvesBelow,
  type SwapAnswer,
  type SwapReason,
  type SwapSide,
  type SwapVerdict,
  swapReasonText,
  swapSentence,
  type UnitSystem,
  unitOf,
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
      wrap(swapSentence(answer, units)),
      [paint("strong", header), ...rows],
      ["Why", ...answer.reasons.flatMap((reason) => reasonLines(reason, answer, units))],
      cautionItems(fileCautionTexts(fileCautions)),
    ]),
  ];
}

function reasonLines(reason: SwapReason, answer: SwapAnswer, units: UnitSystem): string[] {
  const head = `${words[reason.weight]}:`.padEnd(11);
  const lines = wrap(swapReasonText(reason, answer, units), "", 80 - 2 - head.length);
  return lines.map((line, at) => `  ${at === 0 ? head : " ".repeat(head.length)}${line}`);
}

interface Row {
  readonly name: string;
  readonly of: (side: SwapSide) => string;
}

function columnsOf(answer: SwapAnswer, units: UnitSystem) {
  const shown = rowsOf(answer, units)
    .map(({ name, of }) => [name, of(answer.now), of(answer.changed)] as const)
    .filter(([, now, then]) => now !== "" || then !== "");
  const column = (name: string, at: 0 | 1 | 2, align: "left" | "right") => ({
    name,
    unit: "",
    cells: shown.map((row) => row[at] || "–"),
    align,
  });
  return [column("", 0, "left"), column("now", 1, "right"), column("then", 2, "right")];
}

function rowsOf(answer: SwapAnswer, units: UnitSystem): Row[] {
  const at = (kelvin: number) => quantity(kelvin, "temperature", units);
  const { cold, warm } = answer.changed;
  const asked = answer.asked === null ? "" : `, asked ${answer.asked}`;
  const hand = (side: SwapSide, point: "warm" | "cold") => quantity(side[point].inHand.low, "ratio", units);
  const interval = answer.interval ? quantity(answer.interval.time, "running time", units) : "";
  const money = (amount: number | null) => (amount === null ? "" : moneyText(amount));
  const warmer: Row[] =
    warm.temperature === cold.temperature
      ? []
      : [{ name: `in hand at ${at(warm.temperature)}`, of: (side) => hand(side, "warm") }];
  return [
    { name: "element", of: (side) => side.element },
    {
      name: `${answer.pump === "none" ? "at the engine" : "at the injection pump"}${asked}`,
      of: (side) => side.code ?? "",
    },
    ...warmer,
    { name: `in hand at ${at(cold.temperature)}`, of: (side) => hand(side, "cold") },
    { name: "and with the soil of the interval", of: (side) => inHand(side.inHandAtChange, units) },
    vacuumRow(answer, units),
    { name: "starves below", of: (side) => belowShort(side.starves, units) },
    { name: "lasts, at the likely figures", of: (side) => lifeShort(side, units) },
    { name: "10 to 90 % of what may be", of: (side) => rangeShort(side, units) },
    {
      name: `chance of starving before ${interval}`,
      of: ({ spread }) => (spread && interval !== "" ? (chanceText(spread, spread.draws).split(",")[0] ?? "") : ""),
    },
    { name: "changes a year", of: ({ cost }) => (cost.changes === null ? "" : cost.changes.toFixed(1)) },
    { name: "elements a year", of: ({ cost }) => money(cost.elements) },
    { name: "work a year", of: ({ cost }) => money(cost.labour) },
    { name: "stoppages a year, at their chance", of: ({ cost }) => money(cost.stoppages) },
    { name: "cost a year", of: ({ cost }) => money(cost.total) },
  ];
}

/** What a gauge reads at the coldest with clean elements: under the air before a pump, over it where gravity feeds. */
function vacuumRow({ pump, changed }: SwapAnswer, units: UnitSystem): Row {
  const at = quantity(changed.cold.temperature, "temperature", units);
  if (pump !== "none") {
    const unit = unitOf("vacuum", units).symbol;
    return { name: `vacuum at ${at}, clean, ${unit}`, of: ({ cold }) => bandFigure(cold.vacuum, "vacuum", units) };
  }
  const over = ({ low, middle, high }: SwapSide["cold"]["vacuum"]) => ({ low: -high, middle: -middle, high: -low });
  const unit = unitOf("pressure", units).symbol;
  return {
    name: `pressure at ${at}, clean, ${unit}`,
    of: ({ cold }) => bandFigure(over(cold.vacuum), "pressure", units),
  };
}

function inHand(share: number | null, units: UnitSystem): string {
  return share === null ? "" : quantity(share, "ratio", units);
}

function belowShort({ code, temperature }: StarvesBelow, units: UnitSystem): string {
  const at = quantity(temperature, "temperature", units);
  if (code === "below") return at;
  return code === "always" ? `${at} and up` : `not down to ${at}`;
}

function lifeShort({ life, lifeKnown, fillingUnknown }: SwapSide, units: UnitSystem): string {
  if (!lifeKnown || fillingUnknown !== null) return "";
  if (life === 0) return "not at all";
  return life === null ? "over ten years" : quantity(life, "running time", units);
}

function rangeShort({ spread, fillingUnknown }: SwapSide, units: UnitSystem): string {
  if (!spread || fillingUnknown !== null || spread.high === 0) return "";
  const end = (time: number) => (Number.isFinite(time) ? quantity(time, "running time", units) : "ten years on");
  return spread.low === spread.high ? end(spread.low) : `${end(spread.low).replace(/ h$/, "")} to ${end(spread.high)}`;
}
