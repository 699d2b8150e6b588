import {
  type CheckAnswer,
  figure,
  type PartRow,
  partWords,
  quantity,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";
import type { Paint } from "../io/paint.js";
import { type Side, sidesOf } from "./sides.js";
import { left, right, WIDTH } from "./wrap.js";

/** Widths of a cost and of its share beside it. */
const COST = 9;
const SHARE = 6;
/** Most temperatures that stand side by side within the page. */
export const SIDE_BY_SIDE = 3;

/** What every part costs at several temperatures, side by side. */
export function severalPaths(answer: CheckAnswer, units: UnitSystem, paint: Paint): string[][] {
  const temperatures = answer.points.map((point) => `at ${quantity(point.temperature, "temperature", units)}`);
  const all = answer.points.map((point) => sidesOf(answer, point));
  const [first = []] = all;
  return first.flatMap((side, place) => {
    const sides = all.flatMap((one) => one[place] ?? []);
    return side.rows.length === 0 ? [] : [table(side, sides, temperatures, units, paint)];
  });
}

function table(
  first: Side,
  sides: readonly Side[],
  heads: readonly string[],
  units: UnitSystem,
  paint: Paint,
): string[] {
  const name = Math.min(36, WIDTH - 2 - heads.length * (COST + SHARE));
  const title = `${first.title}, costs in ${unitOf(first.kind, units).symbol}`;
  const header = left(title, name + 2) + heads.map((head) => right(head, COST) + " ".repeat(SHARE)).join("");
  const rows = first.rows.map((row, at) => {
    const pairs = sides.map(({ rows: own, kind }) => pairOf(own[at] ?? row, kind, units));
    return `  ${left("  ".repeat(row.depth) + partWords(row), name)}${pairs.join("")}`.trimEnd();
  });
  const ends = sides.map(({ end, kind }) => right(end ? figure(end.value, kind, units) : "", COST) + " ".repeat(SHARE));
  const last = first.end === null ? [] : [`  ${left(first.end.name, name)}${ends.join("")}`.trimEnd()];
  return [paint("strong", header.trimEnd()), ...rows, ...last];
}

function pairOf(row: PartRow, kind: Side["kind"], units: UnitSystem): string {
  const share = row.depth === 0 && row.share > 0 ? quantity(row.share, "ratio", units) : "";
  return right(row.drop === null ? "holds" : figure(row.drop, kind, units), COST) + right(share, SHARE);
}
