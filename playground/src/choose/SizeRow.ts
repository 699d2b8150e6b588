import {
  type Arrangement,
  type ArrangementFigures,
  chanceShort,
  figure,
  moneyText,
  quantity,
  type SizeAnswer,
  stagesText,
  type UnitSystem,
} from "@thirstline/study";
import { keyOf } from "./keyOf.js";
import type { FiguresOf } from "./messages.js";

/** One arrangement as the table has it. */
export interface SizeRow {
  /** as workings name it: its place in the answer */
  readonly of: string;
  /** the same for the same arrangement, whatever is drawn of it meanwhile */
  readonly key: string;
  readonly arrangement: Arrangement;
  readonly figures: ArrangementFigures | null;
  readonly words: string;
  /** by which rankings it is the best */
  readonly best: readonly string[];
}

/** What a column is called and sorted by. */
export interface SizeColumn {
  readonly id: string;
  readonly head: string;
  /** after the head, in lighter type */
  readonly unit?: string;
  readonly cell: (row: SizeRow, units: UnitSystem) => string;
  /** the name of its working */
  readonly figure: string;
  /** less comes first; Infinity for what is not known */
  readonly by: (row: SizeRow) => number;
}

/** The rows of an answer, by yearly cost. */
export function rowsOf({ arrangements, best }: SizeAnswer, figures: FiguresOf): SizeRow[] {
  return arrangements.map((arrangement, at) => ({
    of: `arrangement ${at}`,
    key: keyOf(arrangement),
    arrangement,
    figures: figures.get(keyOf(arrangement)) ?? null,
    words: stagesText(arrangement.stages),
    best: [
      ...(best.cost === at ? ["cheapest"] : []),
      ...(best.vacuum === at ? ["least vacuum"] : []),
      ...(best.changes === at ? ["fewest changes"] : []),
    ],
  }));
}

/** Every column there is something in. */
export function columnsOf(rows: readonly SizeRow[], vacuumUnit: string, boreUnit: string): SizeColumn[] {
  const bored = rows.some(({ arrangement }) => arrangement.bore !== null);
  const drawn = rows.some(({ arrangement }) => arrangement.spread !== undefined);
  const columns: (SizeColumn | null)[] = [
    bored
      ? {
          id: "bore",
          figure: "bore of the lines",
          head: "bore",
          unit: boreUnit,
          cell: ({ arrangement: { bore } }, units) => (bore === null ? "" : figure(bore, "bore", units)),
          by: ({ arrangement: { bore } }) => bore ?? 0,
        }
      : null,
    {
      id: "cost",
      figure: "cost of a year",
      head: "cost a year",
      cell: ({ arrangement: { yearlyCost } }) => (yearlyCost === null ? "–" : moneyText(yearlyCost)),
      by: ({ arrangement: { yearlyCost } }) => yearlyCost ?? Infinity,
    },
    {
      id: "vacuum",
      figure: "most vacuum",
      head: "vacuum",
      unit: vacuumUnit,
      cell: ({ arrangement: { vacuum } }, units) => figure(vacuum, "vacuum", units),
      by: ({ arrangement: { vacuum } }) => vacuum,
    },
    {
      id: "changes",
      figure: "elements changed in a year",
      head: "changed a year",
      cell: ({ arrangement: { changesAYear } }) => changesAYear.toFixed(0),
      by: ({ arrangement: { changesAYear } }) => changesAYear,
    },
    {
      id: "hand",
      figure: "least in hand",
      head: "in hand",
      cell: ({ figures }, units) => (figures ? quantity(figures.inHand, "ratio", units) : ""),
      by: ({ figures }) => -(figures?.inHand ?? -Infinity),
    },
    {
      id: "life",
      figure: "end of life",
      head: "lasts",
      cell: ({ figures }, units) =>
        figures ? (figures.life === null ? "over ten years" : quantity(figures.life, "running time", units)) : "",
      by: ({ figures }) => -(figures === null ? -Infinity : (figures.life ?? Number.MAX_VALUE)),
    },
    drawn
      ? {
          id: "chance",
          figure: "chance of an end before the service interval",
          head: "chance of starving before",
          cell: ({ arrangement: { spread } }) => (spread ? chanceShort(spread) : ""),
          by: ({ arrangement: { spread } }) => spread?.chance ?? Infinity,
        }
      : null,
  ];
  return columns.filter((one) => one !== null);
}
