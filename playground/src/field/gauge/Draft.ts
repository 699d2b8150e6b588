import type { GaugeReading } from "@thirstline/spec/system";
import { exactQuantity, type UnitSystem } from "@thirstline/study";

/** A reading as it is typed, each piece with the unit it was read in. */
export interface Draft {
  readonly hours: string;
  readonly date: string;
  readonly vacuum: string;
  readonly feed: string;
  /** "100 %" or a flow */
  readonly load: string;
  readonly temperature: string;
  readonly level: string;
  readonly changed: boolean;
  readonly note: string;
}

export const emptyDraft: Draft = {
  hours: "",
  date: "",
  vacuum: "",
  feed: "",
  load: "",
  temperature: "",
  level: "",
  changed: false,
  note: "",
};

/** A reading to be typed over. */
export function draftOf(one: GaugeReading, units: UnitSystem): Draft {
  const shown = (value: number | undefined, kind: Parameters<typeof exactQuantity>[1]) =>
    value === undefined ? "" : exactQuantity(value, kind, units);
  return {
    hours: shown(one.hours, "running time"),
    date: one.date ?? "",
    vacuum: shown(one.vacuum, "vacuum"),
    feed: shown(one.feedPressure, "pressure"),
    load: one.load === undefined ? shown(one.flow, "flow") : shown(one.load, "ratio"),
    temperature: shown(one.temperature, "temperature"),
    level: shown(one.depth, "length"),
    changed: one.changed,
    note: one.note ?? "",
  };
}
