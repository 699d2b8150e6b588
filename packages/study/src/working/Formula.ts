import type { QuantityKind } from "../say/units.js";

/** What a letter of a formula stands for: its meaning, its SI unit as JSON answers name it, and how it is shown. */
export interface FormulaSymbol {
  readonly letter: string;
  readonly meaning: string;
  /** SI unit, "1" for a pure number */
  readonly unit: string;
  /** how people read it; null for what only programs put in other units */
  readonly kind: QuantityKind | null;
}

/** A formula, written once, as text that is evaluated, shown and typeset. */
export interface Formula<Letter extends string = string> {
  /** a name for links, such as "laminar-drop" */
  readonly id: string;
  readonly name: string;
  /** in mathjs's notation; `sum(d)`, `min(d)`, `max(d)` go over all the values of a letter that has several */
  readonly text: string;
  readonly symbols: Readonly<Record<Letter, FormulaSymbol>>;
  readonly result: FormulaSymbol;
  /** where it holds */
  readonly holds: string;
  /** how far it may be wrong */
  readonly accuracy: string;
  /** author, year and place; "definition"; or "common practice, no source" */
  readonly source: string;
  /** names of measurements in the accuracy report that check it */
  readonly checkedBy: readonly string[];
}

/** A symbol in short: its meaning, its SI unit, and how it is shown where the unit does not tell. */
export type ShortSymbol = readonly [meaning: string, unit: string, kind?: QuantityKind];

/** A formula in short, as the files of `formulas` state it. */
export interface GivenFormula<Letter extends string> {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  readonly symbols: Readonly<Record<Letter, ShortSymbol>>;
  /** letter, meaning, SI unit, and how it is shown */
  readonly result: readonly [letter: string, meaning: string, unit: string, kind?: QuantityKind];
  readonly holds: string;
  readonly accuracy: string;
  readonly source: string;
  readonly checkedBy?: readonly string[];
}

/** How a quantity of a unit is shown where nothing else is said. */
const kindOfUnit: Readonly<Record<string, QuantityKind>> = {
  Pa: "pressure",
  "m3/s": "flow",
  K: "temperature",
  "m2/s": "viscosity",
  "kg/m3": "density",
  "Pa s": "dynamic viscosity",
  m: "length",
  m2: "area",
  m3: "volume",
  kg: "soil",
  s: "running time",
  W: "power",
  "kg/J": "specific consumption",
  "1": "plain",
};

/** Fills a formula in from its short form. */
export function formula<Letter extends string>(given: GivenFormula<Letter>): Formula<Letter> {
  const [letter, meaning, unit, kind] = given.result;
  const symbols = Object.fromEntries(
    Object.entries<ShortSymbol>(given.symbols).map(([own, short]) => [own, symbolOf(own, short)]),
  );
  return {
    ...given,
    symbols: symbols as Record<Letter, FormulaSymbol>,
    result: symbolOf(letter, kind === undefined ? [meaning, unit] : [meaning, unit, kind]),
    checkedBy: given.checkedBy ?? [],
  };
}

function symbolOf(letter: string, [meaning, unit, kind]: ShortSymbol): FormulaSymbol {
  return { letter, meaning, unit, kind: kind ?? kindOfUnit[unit] ?? null };
}
