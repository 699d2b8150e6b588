import { readReadings } from "@thirstline/spec";
import type { GaugeReading } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { emptyDraft } from "./Draft.js";
import { putIn } from "./putIn.js";
import { readDraft } from "./readDraft.js";
import { readingsCsv } from "./readingsCsv.js";

const typed = (draft: Partial<typeof emptyDraft>) => readDraft({ ...emptyDraft, ...draft });
const reading = (draft: Partial<typeof emptyDraft>): GaugeReading => {
  const read = typed(draft);
  if ("faults" in read) throw new Error([...read.faults.values()].join());
  return read.reading;
};

test("readDraft(draft) reads each box in the unit typed, and tells a fault by its box", () => {
  const one = reading({ hours: "11450 h", vacuum: "12 inHg", load: "85 %", temperature: "54 degF" });
  expect(one).toMatchObject({ hours: 11450 * 3600, load: 0.85, changed: false });
  expect(one.vacuum).toBeCloseTo(12 * 3386.388640341, 6);
  expect(one.temperature).toBeCloseTo(285.372222, 5);
  expect(reading({ date: "2026-03-01", feed: "45 kPa", load: "110 L/h" }).flow).toBeCloseTo(110e-3 / 3600, 12);
  const bad = typed({ hours: "11450 h", vacuum: "14", load: "much" });
  expect("faults" in bad && [...bad.faults.keys()]).toEqual(["vacuum", "load"]);
  expect("faults" in bad && bad.faults.get("vacuum")).toContain("no unit");
  const none = typed({ hours: "11450 h" });
  expect("faults" in none && none.faults.get("")).toContain("no gauge was read");
});

test("readingsCsv(readings) is read back as it was, comma, quote and all", () => {
  const readings = [
    reading({ hours: "11450.25 h", vacuum: "4.1 inHg", temperature: "15 degC", note: 'after "the dock", cold' }),
    reading({ hours: "11500 h", vacuum: "14 kPa", load: "100 %", level: "0.6 m", changed: true }),
  ].map((one, at) => ({ ...one, row: at + 1, line: at + 2 }));
  const back = readReadings(readingsCsv(readings), { file: "" });
  const found = "readings" in back ? back.readings : [];
  expect(found.map(({ vacuum: _, ...rest }) => rest)).toEqual(readings.map(({ vacuum: _, ...rest }) => rest));
  for (const [at, one] of found.entries()) expect(one.vacuum).toBeCloseTo(readings[at]?.vacuum ?? Number.NaN, 6);
});

test("putIn(readings, one) puts a reading at its place in time and counts the rows anew", () => {
  const all = ["11450 h", "11600 h"].map((hours) => reading({ hours, vacuum: "14 kPa" }));
  const rows = putIn(all, reading({ hours: "11500 h", vacuum: "15 kPa" }));
  expect(rows.map(({ row, hours }) => [row, (hours ?? 0) / 3600])).toEqual([
    [1, 11450],
    [2, 11500],
    [3, 11600],
  ]);
});
