import type { SwapAnswer, SwapSide } from "../choose/SwapAnswer.js";
import type { StarvesBelow } from "../choose/starvesBelow.js";
import { bandWords } from "./bandWords.js";
import { moneyText } from "./chooseMoney.js";
import { figOf } from "./figOf.js";
import { chanceShort } from "./lifeWords.js";
import { quantity } from "./quantity.js";
import { type UnitSystem, unitOf } from "./units.js";
import { type Figure, say, type Words } from "./words.js";

/** One line of the comparison: what it is, as it is now, and then; nothing for what is not known of a side. */
export interface SwapRow {
  readonly name: string;
  readonly now: Words;
  readonly changed: Words;
  /** of the fuel, K, that its figures are told at; null where they are of a life, or of the search itself */
  readonly temperature: number | null;
}

/** Both sides of a swap beside each other, line by line; what is known of neither is left out. */
export function swapRows(answer: SwapAnswer, units: UnitSystem): SwapRow[] {
  const cell = (row: Row, of: "now" | "changed") =>
    row.of(answer[of], (figure, text) => (text === "" ? "" : figOf(of, figure, text)), of);
  return rowsOf(answer, units)
    .map((row) => ({
      name: row.name,
      now: pieces(cell(row, "now")),
      changed: pieces(cell(row, "changed")),
      temperature: row.temperature ?? null,
    }))
    .filter(({ now, changed }) => now.length > 0 || changed.length > 0);
}

/** Names a figure as workings do; "" for what is not known. */
type Live = (figure: string, text: string) => Figure | "";

interface Row {
  readonly name: string;
  readonly temperature?: number;
  readonly of: (side: SwapSide, live: Live, name: string) => string | Figure | Words;
}

function pieces(cell: string | Figure | Words): Words {
  if (cell === "") return [];
  return say`${cell}`;
}

function rowsOf(answer: SwapAnswer, units: UnitSystem): Row[] {
  const at = (kelvin: number) => quantity(kelvin, "temperature", units);
  const { cold, warm } = answer.changed;
  const asked = answer.asked === null ? "" : `, asked ${answer.asked}`;
  const interval = answer.interval ? quantity(answer.interval.time, "running time", units) : "";
  const inHandAt = (point: "warm" | "cold"): Row => {
    const { temperature } = answer.changed[point];
    const hand = (side: SwapSide) => quantity(side[point].inHand.low, "ratio", units);
    return {
      name: `in hand at ${at(temperature)}`,
      temperature,
      of: (side, live) => live("in hand, low end", hand(side)),
    };
  };
  const money = (figure: string, amount: (cost: SwapSide["cost"]) => number | null): Row["of"] => {
    return ({ cost }, live) => {
      const known = amount(cost);
      return live(figure, known === null ? "" : moneyText(known));
    };
  };
  return [
    { name: "element", of: (side) => side.element },
    {
      name: `${answer.pump === "none" ? "at the engine" : "at the injection pump"}${asked}`,
      of: (side) => side.code ?? "",
    },
    ...(warm.temperature === cold.temperature ? [] : [inHandAt("warm")]),
    inHandAt("cold"),
    {
      name: "and with the soil of the interval",
      of: (side, live) => live("in hand at the change", inHand(side.inHandAtChange, units)),
    },
    vacuumRow(answer, units),
    { name: "starves below", of: (side, live) => belowShort(side.starves, live, units) },
    { name: "lasts, at the likely figures", of: (side, live) => lifeShort(side, live, units) },
    { name: "10 to 90 % of what may be", of: (side, live) => rangeShort(side, live, units) },
    {
      name: `chance of starving before ${interval}`,
      of: ({ spread }, live) =>
        live("chance of an end before the service interval", spread && interval !== "" ? chanceShort(spread) : ""),
    },
    {
      name: "changes a year",
      of: ({ cost }, live) => live("changes a year", cost.changes === null ? "" : cost.changes.toFixed(1)),
    },
    { name: "elements a year", of: money("cost of elements in a year", ({ elements }) => elements) },
    { name: "work a year", of: money("cost of work in a year", ({ labour }) => labour) },
    {
      name: "stoppages a year, at their chance",
      of: money("cost of stoppages in a year", ({ stoppages }) => stoppages),
    },
    { name: "cost a year", of: money("cost of a year", ({ total }) => total) },
  ];
}

/** What a gauge reads at the coldest with clean elements: under the air before a pump, over it where gravity feeds. */
function vacuumRow({ pump, changed }: SwapAnswer, units: UnitSystem): Row {
  const { temperature } = changed.cold;
  const at = quantity(temperature, "temperature", units);
  if (pump !== "none") {
    const unit = unitOf("vacuum", units).symbol;
    return {
      name: `vacuum at ${at}, clean, ${unit}`,
      temperature,
      of: ({ cold }, _, of) => bandWords(cold.vacuum, "vacuum", units, { of, figure: "vacuum" }),
    };
  }
  const over = ({ low, middle, high }: SwapSide["cold"]["vacuum"]) => ({ low: -high, middle: -middle, high: -low });
  const unit = unitOf("pressure", units).symbol;
  return {
    name: `pressure at ${at}, clean, ${unit}`,
    temperature,
    of: ({ cold }, _, of) => bandWords(over(cold.vacuum), "pressure", units, { of, figure: "feed pressure clean" }),
  };
}

function inHand(share: number | null, units: UnitSystem): string {
  return share === null ? "" : quantity(share, "ratio", units);
}

function belowShort({ code, temperature }: StarvesBelow, live: Live, units: UnitSystem): Figure | Words | "" {
  const at = live("starves below", quantity(temperature, "temperature", units));
  if (code === "below") return at;
  return code === "always" ? say`${at} and up` : say`not down to ${at}`;
}

function lifeShort({ life, lifeKnown, fillingUnknown }: SwapSide, live: Live, units: UnitSystem): string | Figure {
  if (!lifeKnown || fillingUnknown !== null) return "";
  if (life === 0) return "not at all";
  return life === null ? "over ten years" : live("end of life", quantity(life, "running time", units));
}

function rangeShort({ spread, fillingUnknown }: SwapSide, live: Live, units: UnitSystem): string | Figure | Words {
  if (!spread || fillingUnknown !== null || spread.high === 0) return "";
  const { low, high } = spread;
  const shown = (time: number) => quantity(time, "running time", units);
  const end = (share: 10 | 90, time: number, text: string) =>
    Number.isFinite(time) ? live(`life, ${share} % of draws`, text) : "ten years on";
  if (low === high) return end(10, low, shown(low));
  return say`${end(10, low, shown(low).replace(/ h$/, ""))} to ${end(90, high, shown(high))}`;
}
