import { expect, test } from "vitest";
import type { FleetAnswer, FleetEntry } from "./FleetAnswer.js";
import { fleetCsv } from "./fleetCsv.js";

const entry = {
  machine: "Yard crane, old",
  system: "crane.yaml",
  stakes: null,
  group: "cannot say",
  due: null,
  change: [],
  chance: null,
  hours: null,
  gauge: null,
  reasons: [{ code: "no filter" }, { code: "file at fault" }],
} as unknown as FleetEntry;
const due = { date: "2026-12-01", days: 6, by: "hours", early: "2026-11-28", late: "2026-12-09" } as const;
const known = {
  ...entry,
  machine: "Heron",
  system: "heron.yaml",
  stakes: "stops the work",
  group: "now",
  due,
  change: ["prefilter A", "prefilter B"],
  chance: 1 / 3,
  hours: { perDay: 4.5 * 3600, least: null, most: null, from: "log" },
  gauge: { date: "2026-11-20", value: 14e3 },
  reasons: [],
} as unknown as FleetEntry;
const csv = (entries: readonly FleetEntry[], units: "metric" | "us" = "metric") =>
  fleetCsv({ entries } as unknown as FleetAnswer, units).split("\n");

test("fleetCsv(answer, units) is a head and a line for each machine, empty where nothing is known", () => {
  expect(csv([known, entry])).toEqual([
    "group,machine,system,stakes,due,days,by,early,late,change,chance,running (h/day),rate from,gauge (kPa),reasons",
    "now,Heron,heron.yaml,stops the work,2026-12-01,6,hours,2026-11-28,2026-12-09,prefilter A; prefilter B,0.333333,4.5,log,14,",
    'cannot say,"Yard crane, old",crane.yaml,,,,,,,,,,,,no filter stands open in its path; its system file is at fault or missing',
    "",
  ]);
});

test("fleetCsv(answer, 'us') reads the gauge in inHg", () => {
  const [head, line] = csv([known], "us");
  expect(head).toContain("gauge (inHg)");
  expect(line?.split(",")[13]).toBe("4.1342");
});

test("fleetCsv(answer, units) leaves the earliest and latest day empty where no log tells", () => {
  const [, line] = csv([{ ...known, due: { ...due, early: null, late: null } }]);
  expect(line).toContain("2026-12-01,6,hours,,,prefilter A");
});
