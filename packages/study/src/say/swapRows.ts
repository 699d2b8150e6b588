import type { SwapAnswer, SwapSide } from "../choose/SwapAnswer.js";
import type { StarvesBelow } from "../choose/starvesBelow.js";
import { bandFigure } from "./bandText.js";
import { moneyText } from "./chooseMoney.js";
import { chanceShort } from "./lifeWords.js";
import { quantity } from "./quantity.js";
import { type UnitSystem, unitOf } from "./units.js";

/** One line of the comparison: what it is, as it is now, and then; "" for what is not known of a side. */
export interface SwapRow {
  readonly name: string;
  readonly now: string;
  readonly changed: string;
}

/** Both sides of a swap beside each other, line by line; what is known of neither is left out. */
export function swapRows(answer: SwapAnswer, units: UnitSystem): SwapRow[] {
  return rowsOf(answer, units)
    .map(({ name, of }) => ({ name, now: of(answer.now), changed: of(answer.changed) }))
    .filter(({ now, changed }) => now !== "" || changed !== "");
}

interface Row {
  readonly name: string;
  readonly of: (side: SwapSide) => string;
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
      of: ({ spread }) => (spread && interval !== "" ? chanceShort(spread) : ""),
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
