import type { KindName, QuantityResult, Spread } from "@thirstline/spec";
import type { SystemSpread } from "@thirstline/spec/system";
import { Raw } from "./Raw.js";

/** Reads quantities back, as `@thirstline/spec` does. */
export interface Readers {
  readonly quantity: (text: string, kind: KindName) => QuantityResult;
  readonly spreadQuantity: (text: string, kind: KindName) => Spread | { readonly fault: unknown } | undefined;
}

type Units = readonly (readonly [unit: string, size: number])[];

/** Units to write a kind in, the usual one first; the last is SI, in which every value reads back as it was. */
const usual = {
  length: [["m", 1]],
  bore: [
    ["mm", 1e-3],
    ["m", 1],
  ],
  size: [
    ["um", 1e-6],
    ["m", 1],
  ],
  area: [["m2", 1]],
  screen: [
    ["cm2", 1e-4],
    ["m2", 1],
  ],
  permeability: [["m2", 1]],
  inertia: [["1/m", 1]],
  volume: [
    ["L", 1e-3],
    ["m3", 1],
  ],
  water: [
    ["mL", 1e-6],
    ["m3", 1],
  ],
  flow: [
    ["L/h", 1e-3 / 3600],
    ["L/min", 1e-3 / 60],
    ["m3/h", 1 / 3600],
    ["m3/s", 1],
  ],
  pressure: [
    ["kPa", 1e3],
    ["Pa", 1],
  ],
  density: [["kg/m3", 1]],
  concentration: [
    ["mg/L", 1e-3],
    ["kg/m3", 1],
  ],
  kinematicViscosity: [
    ["mm2/s", 1e-6],
    ["m2/s", 1],
  ],
  dynamicViscosity: [
    ["mPa s", 1e-3],
    ["Pa s", 1],
  ],
  mass: [
    ["g", 1e-3],
    ["kg", 1],
  ],
  power: [
    ["kW", 1e3],
    ["W", 1],
  ],
  consumption: [
    ["g/kWh", 1e-3 / 3.6e6],
    ["kg/J", 1],
  ],
  time: [
    ["h", 3600],
    ["s", 1],
  ],
  calendar: [
    ["years", 31_557_600],
    ["months", 31_557_600 / 12],
    ["days", 86_400],
    ["s", 1],
  ],
  distance: [
    ["km", 1000],
    ["m", 1],
  ],
  temperature: [["K", 1]],
} as const satisfies Record<string, Units>;

/** Which units a figure is written in. */
type Usual = keyof typeof usual;

type Path = readonly (string | number)[];

/** How a figure is asked for: its key in the system, its units, its kind, and how often it holds what is written. */
export interface Figure {
  readonly key: string;
  readonly unit: Usual;
  readonly kind: KindName;
  readonly times?: number;
}

/**
 * Writes figures of one place in a system, each so that it reads back as the very same number: in its usual unit where
 * that does, else in SI. A figure with a spread is written with it; several that are one unknown become one text of the
 * file, named where it stands first and pointed to from the others.
 */
export class Pen {
  private readonly readers: Readers;
  private readonly spreads: ReadonlyMap<string, SystemSpread>;
  private readonly path: Path;
  private readonly named: Set<number>;

  constructor(readers: Readers, spreads: readonly SystemSpread[], path: Path = [], named = new Set<number>()) {
    this.readers = readers;
    this.spreads = new Map(spreads.map((one) => [keyOf(one.path), one]));
    this.path = path;
    this.named = named;
  }

  /** The pen at a place further in. */
  in(...keys: Path): Pen {
    return new Pen(this.readers, [...this.spreads.values()], [...this.path, ...keys], this.named);
  }

  /** A figure as it stands in a file. */
  write(value: number, figure: Figure): string | Raw {
    const spread = this.spreads.get(keyOf([...this.path, figure.key]));
    if (spread === undefined) return this.plain(value, figure);
    const { group } = spread;
    if (group !== undefined && this.named.has(group)) return new Raw(`*spread${group}`);
    const text = this.spreadText(value, spread, figure);
    if (group === undefined) return new Raw(text);
    this.named.add(group);
    return new Raw(`&spread${group} ${text}`);
  }

  /** The same of a figure that may not be there. */
  maybe(value: number | undefined, figure: Figure): string | Raw | undefined {
    return value === undefined ? undefined : this.write(value, figure);
  }

  /** A share, with its spread in per cent where it has one. */
  share(value: number, key: string): number | Raw {
    const spread = this.spreads.get(keyOf([...this.path, key]));
    if (spread === undefined) return value;
    return new Raw(`${percent(spread.low)} to ${percent(spread.high)} %`);
  }

  private plain(value: number, { unit, kind, times = 1 }: Figure): string {
    if (unit === "temperature") {
      const celsius = `${Number((value - 273.15).toFixed(6))} degC`;
      if (this.reads(celsius, kind) === value) return celsius;
    }
    const texts = textsOf(value / times, usual[unit]);
    return texts.find((text) => this.reads(text, kind) * times === value) ?? (texts.at(-1) as string);
  }

  private spreadText(value: number, { low, high }: SystemSpread, { unit, kind, times = 1 }: Figure): string {
    const same = (text: string): boolean => {
      const read = this.readers.spreadQuantity(text, kind);
      if (read === undefined || "fault" in read) return false;
      return read.value * times === value && read.low * times === low && read.high * times === high;
    };
    const around = Number(((high / value - 1) * 100).toPrecision(6));
    const texts = usual[unit].flatMap((one) => {
      const [shown] = textsOf(value / times, [one]);
      const [from = "", to = ""] = [low, high].map((end) => textsOf(end / times, [one])[0]);
      return [`${shown} ± ${around} %`, `${from.slice(0, from.lastIndexOf(` ${one[0]}`))} to ${to}`];
    });
    return texts.find(same) ?? (texts.at(-1) as string);
  }

  private reads(text: string, kind: KindName): number {
    const back = this.readers.quantity(text, kind);
    return "value" in back ? back.value : Number.NaN;
  }
}

function keyOf(path: Path): string {
  return path.join("/");
}

function textsOf(value: number, units: Units): string[] {
  return units.map(([unit, size]) => `${size === 1 ? value : Number((value / size).toPrecision(12))} ${unit}`);
}

function percent(share: number): string {
  return String(Number((share * 100).toPrecision(12)));
}
