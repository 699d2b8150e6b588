import { dateOf } from "../../fleet/day.js";
import type { Meter, MeterReading } from "../../fleet/Meter.js";
import { distance, hours } from "../formulas/yard.js";
import type { Step } from "../Step.js";
import { fromSource, inWords, worked } from "../worked.js";

/** Seconds in a day, as a step. */
export const DAY = fromSource("definition", { name: "seconds in a day", value: 86400, unit: "s/d" });

interface Row {
  readonly day: number;
  readonly total: Step;
}

/** A meter followed through a log, each total with how it was reached; days are told from today. */
export class MeterTrack {
  readonly formulas: typeof hours | typeof distance;
  readonly meter: Meter;
  readonly readings: readonly MeterReading[];
  /** of use */
  readonly rate: Step;
  /** today, by `dayOf` */
  readonly on: number;
  private readonly of: "hours" | "distance";
  private readonly rows: readonly Row[];

  /** @param readings as the meter was made of */
  constructor(
    of: "hours" | "distance",
    meter: Meter,
    readings: readonly MeterReading[],
    { rate, on }: { readonly rate: Step; readonly on: number },
  ) {
    this.of = of;
    this.meter = meter;
    this.readings = readings;
    this.rate = rate;
    this.on = on;
    this.formulas = of === "hours" ? hours : distance;
    const rows: Row[] = [];
    let since: { readonly total: Step; readonly shown: Step } | null = null;
    for (const reading of readings) {
      const last = rows.at(-1);
      const shown = this.shown(reading);
      if (reading.isNew && last) since = { total: this.onward(last, reading.day), shown };
      const total: Step = since ? worked(this.formulas.renewed, { M: since.total, v: shown, w: since.shown }) : shown;
      if (last?.day === reading.day) rows.pop();
      rows.push({ day: reading.day, total });
    }
    if (rows.length === 0)
      rows.push({ day: 0, total: this.plain("no row of the log shows it; only what it gains matters", 0) });
    this.rows = rows;
  }

  /** Days from today to a day of the calendar. */
  days(name: string, from: number, to: number): Step {
    return inWords("counted on the calendar", { name, value: to - from, unit: "d" });
  }

  /** What a row shows. */
  shown({ day, value }: MeterReading): Step {
    return this.plain(`read on ${dateOf(day)}, by the log or the list of machines`, value);
  }

  /** A figure of the meter told in words. */
  plain(words: string, value: number): Step {
    const isHours = this.of === "hours";
    return inWords(words, {
      name: isHours ? "hour meter" : "distance meter",
      value,
      unit: isHours ? "s" : "m",
      kind: isHours ? "running time" : "distance",
    });
  }

  /** The total on a day. */
  at(day: number): Step {
    const { rows } = this;
    const after = rows.findIndex((row) => row.day >= day);
    const left = rows[after === -1 ? rows.length - 1 : after - 1];
    const right = after === -1 ? undefined : rows[after];
    if (right?.day === day) return right.total;
    if (!left || !right) return this.onward((left ?? right) as Row, day);
    const [n, w] = [this.days("days from the row before", left.day, day), this.between(left, right)];
    return worked(this.formulas.between, { M: left.total, N: right.total, n, w });
  }

  /** Days from today until a total is reached; null when it never is. */
  when(T: Step): Step | null {
    const { rows, on } = this;
    const [first, last] = [rows[0] as Row, rows.at(-1) as Row];
    const outside = T.value > last.total.value ? last : T.value < first.total.value ? first : null;
    if (outside) {
      const l = this.days("days from today to the nearest row", on, outside.day);
      if (this.rate.value > 0) return worked(this.formulas.reached, { l, T, M: outside.total, r: this.rate, D: DAY });
      return outside === first ? l : null;
    }
    const after = rows.findIndex(({ total }) => total.value >= T.value);
    const right = rows[after] as Row;
    const left = rows[after - 1] ?? right;
    if (right.total.value === left.total.value) return this.days("days from today to the row", on, right.day);
    const l = this.days("days from today to the row before", on, left.day);
    return worked(this.formulas.passed, { l, w: this.between(left, right), T, M: left.total, N: right.total });
  }

  private between(left: Row, right: Row): Step {
    return this.days("days between the rows", left.day, right.day);
  }

  private onward({ day: from, total }: Row, day: number): Step {
    if (day === from) return total;
    return worked(this.formulas.onward, {
      M: total,
      r: this.rate,
      D: DAY,
      n: this.days("days from that row", from, day),
    });
  }
}
