import type { TableForm } from "../table/readTable.js";

/** Columns of a table of readings. */
export type ReadingColumn =
  | "hours"
  | "date"
  | "vacuum"
  | "feed pressure"
  | "load"
  | "flow"
  | "temperature"
  | "tank level"
  | "changed"
  | "note";

/** What a table of readings is made of. */
export const readingsForm: TableForm<ReadingColumn> = {
  what: "a table of readings",
  columns: {
    hours: "runningTime",
    date: "text",
    vacuum: "vacuumRead",
    "feed pressure": "pressureRead",
    load: "share",
    flow: "flow",
    temperature: "temperature",
    "tank level": "depth",
    changed: "text",
    note: "text",
  },
  needed: [],
  synonyms: {
    "hour meter": "hours",
    time: "hours",
    h: "hours",
    day: "date",
    restriction: "vacuum",
    suction: "vacuum",
    gauge: "vacuum",
    pressure: "feed pressure",
    feed: "feed pressure",
    demand: "flow",
    "fuel temperature": "temperature",
    temp: "temperature",
    level: "tank level",
    depth: "tank level",
    change: "changed",
    remark: "note",
    notes: "note",
  },
  bounds: {
    bytes: 4 * 1024 * 1024,
    rows: 20_000,
    columns: 50,
    faults: 100,
    tooMany: "more than 20000 readings; leave out the oldest",
  },
};
