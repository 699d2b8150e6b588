import { unit } from "mathjs";
import type { Table } from "./table.js";

// A worked example stands in two tables: what is given, and what the source answers, each figure in the unit the source
// prints. Units are turned to SI by mathjs here, so a slip in our own conversions cannot hide in the examples.

/** What one of a printed unit is in SI; a figure without a unit counts as itself. */
function worthOf(printed: string): number {
  return printed === "" ? 1 : unit(1, printed).toSI().toJSON().value;
}

/** Looks up what an example is given, in SI. A quantity the table lacks is an error. */
export function givenOf(table: Table, example: string): (quantity: string) => number {
  const rows = table.rows.filter((row) => row.text("example") === example);
  return (quantity) => {
    const row = rows.find((one) => one.text("quantity") === quantity);
    if (row === undefined) throw new Error(`${table.file} gives ${example} no "${quantity}"`);
    return row.number("value") * worthOf(row.text("unit"));
  };
}

/** Answers in SI by quantity. */
export type Answers = Readonly<Record<string, number>>;

/** The answer to a row of an answers table, in the unit that row prints; NaN when nobody answered. */
export function answerIn(
  answers: Readonly<Record<string, Answers>>,
  example: string,
  quantity: string,
  unitName: string,
): number {
  return (answers[example]?.[quantity] ?? Number.NaN) / worthOf(unitName);
}
