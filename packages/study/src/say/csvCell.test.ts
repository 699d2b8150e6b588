import { expect, test } from "vitest";
import { csvCell } from "./csvCell.js";

test.each([
  ["P10 tall", "P10 tall"],
  ["A, B", '"A, B"'],
  ['1" bore', '"1"" bore"'],
  ["A\nB", '"A\nB"'],
  ["A\rB", '"A\rB"'],
])("csvCell(%j) is in quotes where it holds what would end a cell", (text, cell) => expect(csvCell(text)).toBe(cell));
