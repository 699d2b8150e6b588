import {
  type CheckAnswer,
  type CheckPoint,
  costsInOrder,
  figure,
  type PartRow,
  partWords,
  quantity,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";
import type { Paint } from "../io/paint.js";
import { bar } from "./scale.js";
import { type Side, sidesOf } from "./sides.js";
import { left, right, wrap } from "./wrap.js";

/** Widths of the columns; what the flow is like takes the rest. */
const COLUMNS = { name: 30, flow: 9, cost: 11, share: 7, bar: 10 } as const;

/** Every part from tank to engine, with its cost and its share of its side. */
export function pathTables(answer: CheckAnswer, point: CheckPoint, units: UnitSystem, paint: Paint): string[][] {
  const sides = sidesOf(answer, point).filter(({ rows }) => rows.length > 0);
  return sides.map((side) => table(side, units, paint));
}

function table({ title, rows, kind, end }: Side, units: UnitSystem, paint: Paint): string[] {
  const header =
    left(title, COLUMNS.name + 2) +
    right(unitOf("flow", units).symbol, COLUMNS.flow) +
    right(`costs ${unitOf(kind, units).symbol}`, COLUMNS.cost) +
    right("share", COLUMNS.share);
  const sum = (value: number) => right(figure(value, kind, units), COLUMNS.cost);
  const last = end === null ? [] : [`  ${left(end.name, COLUMNS.name + COLUMNS.flow)}${sum(end.value)}`];
  return [paint("strong", header), ...rows.map((row) => rowLine(row, kind, units)), ...last, ...largestFirst(rows)];
}

function rowLine(row: PartRow, kind: Side["kind"], units: UnitSystem): string {
  const name = left("  ".repeat(row.depth) + partWords(row), COLUMNS.name);
  const flow = right(row.kind === "velocity" ? "" : figure(row.flow, "flow", units), COLUMNS.flow);
  const cost = right(row.drop === null ? "holds back" : figure(row.drop, kind, units), COLUMNS.cost);
  const shared = row.depth === 0 && row.share > 0;
  const share = right(shared ? quantity(row.share, "ratio", units) : "", COLUMNS.share);
  const filled = left(shared ? bar(row.share, COLUMNS.bar) : "", COLUMNS.bar);
  return `  ${name}${flow}${cost}${share} ${filled} ${regimeWord(row)}`.trimEnd();
}

/** What the flow in a line is like; said of lines only. */
function regimeWord({ regime }: PartRow): string {
  return regime === "transitional" ? "between" : (regime ?? "");
}

/** The parts that make up most of what a side costs; a part of less than a twentieth is not worth a word. */
function largestFirst(rows: readonly PartRow[]): string[] {
  const costs = costsInOrder(rows).filter(({ share }) => share >= 0.05);
  if (costs.length < 2) return [];
  const named = costs.slice(0, 4).map(({ name, share }) => `${name} ${quantity(share, "ratio", "metric")}`);
  return wrap(`Largest first: ${named.join(", ")}.`, "  ", 78).map((line) => `  ${line}`);
}
