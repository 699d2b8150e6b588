import type { TableForm } from "../table/readTable.js";
import { logBounds } from "./logBounds.js";

/** Columns of a log. */
export type LogColumn = "machine" | "date" | "hours" | "distance" | "gauge" | "event" | "note";

/** What a log is made of. */
export const logForm: TableForm<LogColumn> = {
  what: "a log",
  columns: {
    machine: "text",
    date: "text",
    hours: "runningTime",
    distance: "odometer",
    gauge: "gaugeReading",
    event: "text",
    note: "text",
  },
  needed: ["machine", "date"],
  synonyms: {
    name: "machine",
    day: "date",
    hrs: "hours",
    "hour meter": "hours",
    "running hours": "hours",
    odometer: "distance",
    "distance meter": "distance",
    mileage: "distance",
    vacuum: "gauge",
    what: "event",
    remark: "note",
    notes: "note",
  },
  bounds: logBounds,
};
