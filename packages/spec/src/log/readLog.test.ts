import { describe, expect, test } from "vitest";
import { formatFault } from "../read/formatFault.js";
import { logLines, newLogHead } from "./logLines.js";
import { readLog } from "./readLog.js";

const read = (...lines: string[]) => readLog(`${lines.join("\n")}\n`, { file: "log.csv" });
const faultsOf = (...lines: string[]) => read(...lines).faults.map(formatFault);
const HEAD = "machine,date,hours (h),distance (km),gauge (inHg),event,note";

test("readLog(text) reads rows in SI, a unit from the head or from the cell", () => {
  const { entries, faults, sound } = read(
    "# the yard's log",
    HEAD,
    '"Heron, port engine",2026-11-25,11650,,6,changed prefilter A,"seal, dry"',
    "Lorry,2024-02-29,,245 mile,14 kPa,,",
    "Lorry,2026-11-25,0,,,new hour meter,",
  );
  expect(faults).toEqual([]);
  expect(sound).toBe(true);
  expect(entries).toEqual([
    {
      machine: "Heron, port engine",
      date: "2026-11-25",
      hours: 11650 * 3600,
      gauge: 6 * 3386.388640341,
      event: { kind: "changed", element: "prefilter A" },
      note: "seal, dry",
    },
    { machine: "Lorry", date: "2024-02-29", distance: 245 * 1609.344, gauge: 14000, event: { kind: "reading" } },
    { machine: "Lorry", date: "2026-11-25", hours: 0, event: { kind: "new hour meter" } },
  ]);
});

test("readLog(text) tells every fault with its line and column, and reads the rows of other machines", () => {
  const log = read(
    HEAD,
    "Heron,25.11.2026,11650,,,reading,",
    "Lorry,2026-02-29,x,,,chaged all,",
    ",2026-11-25,,,,,",
    "Crane,2026-11-25,11650,,200,,",
    "Boat,2026-11-25,640,,3,changed,",
    "Pump,2026-11-25,,,,new hour meter,",
    "Truck,2026-11-25,12,,,reading,a,b",
    "Pickup,2026-11-25,12,,,reading,",
  );
  expect(log.faults.map(formatFault)).toEqual([
    'log.csv:2 date: "25.11.2026" is not a date; write the day such as 2026-11-25',
    'log.csv:3 date: "2026-02-29": February 2026 has days 1 to 28; write the day such as 2026-11-25',
    'log.csv:3 hours: "x" is not one number with one unit; write a running time such as "1200 h"',
    'log.csv:3 event: "chaged all" is no event of a log; write "reading", "changed all", "changed prefilter A", "new hour meter", "new distance meter" or "note"',
    "log.csv:4 machine: missing; write which machine it is",
    'log.csv:5 gauge: "200 inHg" is too large for a gauge reading; 0 kPa to 101.325 kPa makes sense, such as "14 kPa"',
    'log.csv:6 event: which element was changed? write "changed all" or its name after it',
    "log.csv:7 hours: missing; write what the new hour meter shows",
    "log.csv:8: a cell more than there are columns (7); put a cell that holds a separator in quotes",
  ]);
  expect(log.faults[1]).toMatchObject({ line: 3, column: 7 });
  expect(log.entries.map(({ machine }) => machine)).toEqual(["Pickup"]);
  expect([...log.doubtful]).toEqual([
    ["Heron", 2],
    ["Lorry", 3],
    ["", 4],
    ["Crane", 5],
    ["Boat", 6],
    ["Pump", 7],
    ["Truck", 8],
  ]);
});

describe("readLog(text) refuses a meter", () => {
  test("that runs backwards, in the order of the days and not of the rows", () => {
    const rows = ["A,2026-11-25,100,,,,", "A,2026-11-01,90,,,,", "A,2026-11-10,80,,,,"];
    expect(faultsOf(HEAD, ...rows)).toEqual([
      'log.csv:4 hours: the hour meter runs backwards, from 90 h on 2026-11-01 to 80 h on 2026-11-10; correct the figure or, for a new meter, write the event "new hour meter"',
    ]);
    expect(faultsOf(HEAD, "A,2026-11-01,,90,,,", "A,2026-11-10,,80,,,")[0]).toContain(
      "the distance meter runs backwards",
    );
    expect(faultsOf(HEAD, "A,2026-11-01,90,,,,", "A,2026-11-10,0,,,new hour meter,")).toEqual([]);
    expect(faultsOf(HEAD, "A,2026-11-01,90,,,,", "B,2026-11-10,80,,,,")).toEqual([]);
  });

  test("that gains more hours than there are", () => {
    expect(faultsOf(HEAD, "A,2026-11-01,90,,,,", "A,2026-11-02,139,,,,")).toEqual([
      "log.csv:3 hours: the hour meter gains 49 h from 2026-11-01 to 2026-11-02, more than there are; correct the figure or the date",
    ]);
    expect(faultsOf(HEAD, "A,2026-11-01,90,,,,", "A,2026-11-02,138,,,,")).toEqual([]);
  });
});

test("readLog(text) reports a torn last line and takes nothing of it for granted", () => {
  const log = readLog(`${HEAD}\nA,2026-11-01,90,,,,\nA,2026-11-2`, { file: "log.csv" });
  expect(log.faults.map(formatFault)).toEqual([
    "log.csv:3: the last line ends in its middle, as when the power fails while it is written; complete it, or take it out",
  ]);
  expect(log).toMatchObject({ sound: false, entries: [{ date: "2026-11-01" }] });
  expect([...log.doubtful]).toEqual([["A", 3]]);
  // All cells are there: an editor that ends no last line.
  expect(readLog(`${HEAD}\nA,2026-11-01,90,,,,`, { file: "log.csv" })).toMatchObject({ sound: true, faults: [] });
  const open = readLog(`${HEAD}\nA,2026-11-01,90,,,,"half a no`, { file: "log.csv" });
  expect(open).toMatchObject({ sound: false, faults: [{ code: "open quote" }] });
});

test("readLog(text) names bad heads, and an empty log is a log", () => {
  expect(faultsOf("machine,date,hrs (h),gauge (km),note (h)")).toEqual([
    'log.csv:1: "hrs (h)" is not a column of a log; write "hours"',
    'log.csv:1: "1 km" is a length; a pressure is wanted, such as "14 kPa"',
    'log.csv:1: "note" has no unit; leave out the brackets',
  ]);
  expect(faultsOf("machine,hours (h)")).toEqual([
    'log.csv:1: no column "date"; the first row names the columns of a log',
  ]);
  expect(faultsOf("machine,date,date")).toEqual(['log.csv:1: "date" is a column already; keep one of the two']);
  expect(readLog("", { file: "log.csv" })).toMatchObject({ entries: [], faults: [], sound: true });
  expect(readLog("# nothing yet\n", { file: "log.csv" }).faults[0]?.code).toBe("empty");
});

test("readLog(bytes) reads 100,000 rows within seconds, and tells at most a hundred faults", () => {
  const rows = Array.from({ length: 100_000 }, (_, at) => {
    const date = `20${20 + Math.floor(at / 5000)}-01-01`;
    return `machine ${at % 5000},${date},${1000 + Math.floor(at / 5000) * 500},,4.5,reading,`;
  });
  const begun = performance.now();
  const log = read("machine,date,hours (h),distance (km),gauge (inHg),event,note", ...rows);
  expect(performance.now() - begun).toBeLessThan(10_000); // some 0.3 s on an idle machine
  expect(log.faults.length).toBe(0);
  expect(log.entries).toHaveLength(100_000);
  const bad = read(HEAD, ...rows.map((row) => row.replace(",4.5,", ",4.5 x,")));
  expect(bad.faults).toHaveLength(101);
  expect(bad.faults.at(-1)?.code).toBe("more faults");
  expect(bad.doubtful.size).toBe(5000); // not one is believed
});

test("logLines(entries, columns, separator) writes rows that read back as they were", () => {
  for (const head of [newLogHead, HEAD, "date;machine;hours;distance (mile);gauge (psi);event;note"]) {
    const { columns, separator } = read(head);
    const entries = [
      {
        machine: 'Heron; "port", engine',
        date: "2026-11-25",
        hours: 41_940_000,
        gauge: 13_789.514586336723,
        event: { kind: "changed", element: "prefilter A, left" } as const,
        note: "two\nlines",
      },
      { machine: "Lorry", date: "2026-11-25", distance: 1609.344 * 88, event: { kind: "new distance meter" } as const },
    ];
    const made = logLines(entries, columns, separator);
    const lines = "lines" in made ? made.lines : [];
    const back = read(head, ...lines);
    expect(back.faults).toEqual([]);
    expect(back.entries).toHaveLength(2);
    for (const [at, entry] of entries.entries()) {
      const { hours = 0, distance = 0, gauge = 0, ...rest } = back.entries[at] ?? {};
      const {
        hours: h = 0,
        distance: d = 0,
        gauge: g = 0,
        ...same
      } = entry as typeof entry & { hours?: number; distance?: number; gauge?: number };
      expect(rest).toEqual(same);
      expect(
        [hours / (h || 1), distance / (d || 1), gauge / (g || 1)].map((one) => Math.round(one * 1e9) / 1e9),
      ).toEqual([h, d, g].map((one) => (one === 0 ? 0 : 1)));
    }
  }
});

test("logLines(entries, columns, separator) names what a log has no column for", () => {
  const { columns, separator } = read("machine,date,hours (h)");
  const entry = { machine: "A", date: "2026-11-25", gauge: 14000, event: { kind: "changed", element: null } as const };
  expect(logLines([entry], columns, separator)).toEqual({ noColumn: ["gauge", "event"] });
  expect(
    logLines([{ machine: "A", date: "2026-11-25", hours: 3600, event: { kind: "reading" } }], columns, separator),
  ).toEqual({
    lines: ["A,2026-11-25,1"],
  });
});
