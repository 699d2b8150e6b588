import { type SizeAnswer, siUnit, stagesText } from "@thirstline/study";
import { keyOf } from "./keyOf.js";
import type { FiguresOf } from "./messages.js";

const HEAD = [
  "arrangement",
  `bore (${siUnit.bore})`,
  "cost a year",
  "stoppages a year",
  `vacuum (${siUnit.vacuum})`,
  "elements",
  "changes a year",
  "code",
  "in hand",
  `life (${siUnit["running time"]})`,
  "chance of starving before the interval",
  "pareto",
];

/** What a search found as a table for a spreadsheet: SI, what is not known left empty. */
export function sizeCsv({ arrangements }: SizeAnswer, figures: FiguresOf): string {
  const rows = arrangements.map((one) => {
    const own = figures.get(keyOf(one));
    const cells = [
      stagesText(one.stages),
      one.bore,
      one.yearlyCost,
      one.stoppages,
      one.vacuum,
      one.elements,
      one.changesAYear,
      one.code,
      own?.inHand,
      own?.life,
      one.spread?.chance,
      one.pareto ? "yes" : "no",
    ];
    return cells.map(cellOf).join(",");
  });
  return `${[HEAD.join(","), ...rows].join("\n")}\n`;
}

function cellOf(value: string | number | null | undefined): string {
  if (value === null || value === undefined || value === Infinity) return "";
  const text = String(value);
  // A spreadsheet would take what begins like a formula for one.
  const plain = typeof value === "string" && /^[=+\-@\t]/.test(text) ? `'${text}` : text;
  return /[",\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
