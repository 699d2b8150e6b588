import { primingStrokes } from "@thirstline/study";
import { expect, test } from "vitest";
import { measure, readTable, report } from "../support/table.js";

test("primingStrokes(given) gives the strokes worked out by hand", () => {
  const table = readTable("priming/strokes.csv");
  const error = measure(
    table.rows,
    (row) =>
      primingStrokes({
        volume: row.number("volume_l") / 1e3,
        stroke: row.number("stroke_ml") / 1e6,
        fill: row.number("fill"),
      }),
    "strokes",
    "absolute",
  );
  report("priming/strokes", table, error);
  expect(table.rows).toHaveLength(4);
  expect(error.max, error.worst).toBe(0);
});
