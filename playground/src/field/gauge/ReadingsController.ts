import type { Fault } from "@thirstline/spec";
import type { GaugeReading } from "@thirstline/spec/system";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { keepReadings, keptReadings } from "../store/readings.js";
import type { StoreTrouble } from "../store/StoreTrouble.js";
import type { KeptReadings } from "./KeptReadings.js";

/** A file of readings that was refused. */
interface Refused {
  readonly file: string;
  readonly text: string;
  readonly faults: readonly Fault[];
}

/** The readings of the machine on the sheet: its own, kept on the device, or invented ones that are only looked at. */
export class ReadingsController implements ReactiveController {
  readings: readonly GaugeReading[] = [];
  put: KeptReadings["put"] = [];
  /** the file of invented readings that are shown; null for the machine's own */
  demo: string | null = null;
  trouble: StoreTrouble | null = null;
  refused: Refused | null = null;
  private readonly host: ReactiveControllerHost;
  private machine: string | null = null;
  private own: KeptReadings | null = null;

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  /** Nothing to be done: it is told when there is a machine. */
  hostConnected(): void {}

  /** Brings back what was kept of a machine. */
  async open(machine: string): Promise<void> {
    if (machine === this.machine) return;
    this.machine = machine;
    const kept = await keptReadings(machine);
    if (this.machine !== machine) return;
    this.trouble = typeof kept === "string" ? kept : null;
    await this.show(typeof kept === "string" ? null : kept);
  }

  /** Takes a file's readings in place of those there; at fault, they stay. */
  async take(file: string, given: string | Uint8Array, keep: boolean): Promise<void> {
    const { readReadings } = await import("@thirstline/spec");
    const read = readReadings(given, { file });
    const text = typeof given === "string" ? given : new TextDecoder().decode(given);
    if ("faults" in read) {
      this.refused = { file, text, faults: read.faults };
    } else if (keep) {
      await this.keep({ text, put: [] });
      this.set(read.readings, null, []);
    } else this.set(read.readings, file, []);
    this.host.requestUpdate();
  }

  /** Other readings in place of those there; why not, where they do not follow each other. */
  async change(readings: readonly GaugeReading[]): Promise<string | null> {
    const [{ readReadings }, { readingsCsv }] = await Promise.all([
      import("@thirstline/spec"),
      import("./readingsCsv.js"),
    ]);
    const text = readingsCsv(readings);
    const read = readings.length === 0 ? { readings } : readReadings(text, { file: "" });
    if ("faults" in read) return read.faults.map(({ message }) => message).join("; ");
    if (this.demo === null) await this.keep(readings.length === 0 ? null : { text, put: this.put });
    this.set(read.readings, this.demo, this.put);
    return null;
  }

  /** Remembers what soil was put on the sheet, so that the gauge is read without it. */
  async setPut(put: KeptReadings["put"]): Promise<void> {
    this.put = put;
    if (this.demo === null && this.own !== null) await this.keep({ ...this.own, put });
    this.host.requestUpdate();
  }

  /** From invented readings back to the machine's own. */
  async back(): Promise<void> {
    await this.show(this.own);
  }

  async forget(): Promise<void> {
    await this.keep(null);
    this.set([], null, []);
  }

  leave(): void {
    this.refused = null;
    this.host.requestUpdate();
  }

  private async keep(kept: KeptReadings | null): Promise<void> {
    this.own = kept;
    if (this.machine !== null) this.trouble = await keepReadings(this.machine, kept);
  }

  private async show(kept: KeptReadings | null): Promise<void> {
    this.own = kept;
    if (kept === null) return this.set([], null, []);
    const { readReadings } = await import("@thirstline/spec");
    const read = readReadings(kept.text, { file: "the readings kept here" });
    if ("readings" in read) return this.set(read.readings, null, kept.put);
    // Kept by another version: shown with its faults, to be put right or saved.
    this.set([], null, []);
    this.refused = { file: "the readings kept here", text: kept.text, faults: read.faults };
    this.host.requestUpdate();
  }

  private set(readings: readonly GaugeReading[], demo: string | null, put: KeptReadings["put"]): void {
    this.readings = readings;
    this.demo = demo;
    this.put = put;
    this.refused = null;
    this.host.requestUpdate();
  }
}
