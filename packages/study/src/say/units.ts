/** Which units a reader wants. */
export type UnitSystem = "metric" | "us";

/** Kinds of quantity an answer shows. */
export type QuantityKind =
  | "vacuum"
  | "pressure"
  | "absolute pressure"
  | "flow"
  | "temperature"
  | "viscosity"
  | "density"
  | "altitude"
  | "length"
  | "bore"
  | "particle size"
  | "area"
  | "power"
  | "specific consumption"
  | "dynamic viscosity"
  | "running time"
  | "volume"
  | "small volume"
  | "distance"
  | "hours a day"
  | "distance a day"
  | "soil"
  | "solids"
  | "ratio"
  | "plain";

/** A unit as shown: its symbol, and shown = (SI - zero) / size. */
export interface ShownUnit {
  readonly symbol: string;
  readonly size: number;
  readonly zero?: number;
}

// Exact by definition: conventional inch of mercury, pound per square inch, US gallon, foot, pound (NIST SP 811, app. B).
const INCH_OF_MERCURY = { symbol: "inHg", size: 3386.388640341 };
const PSI = { symbol: "psi", size: 6894.757293168361 };
const KILOPASCAL = { symbol: "kPa", size: 1000 };
const US_GALLON = 231 * 0.0254 ** 3;
const POUND = 0.45359237;
const FOOT = 0.3048;
const INCH = 0.0254;
// 550 foot-pounds-force a second, with standard gravity (NIST SP 811, app. B.8).
const HORSEPOWER = 550 * FOOT * POUND * 9.80665;
// International mile, and the hour.
const MILE = 5280 * FOOT;
const HOURS = { symbol: "h", size: 3600 };
// How much a machine is used: by its meter, in a day of the calendar.
const DAY = 86400;
const HOURS_A_DAY = { symbol: "h a day", size: HOURS.size / DAY };
// Filters are weighed in grams and fuel judged in milligrams per litre in either system.
const GRAM = { symbol: "g", size: 1e-3 };
const MILLIGRAM_A_LITRE = { symbol: "mg/L", size: 1e-3 };
const MICROMETRE = { symbol: "µm", size: 1e-6 };

const units: Readonly<Record<QuantityKind, Readonly<Record<UnitSystem, ShownUnit>>>> = {
  vacuum: { metric: KILOPASCAL, us: INCH_OF_MERCURY },
  pressure: { metric: KILOPASCAL, us: PSI },
  "absolute pressure": { metric: KILOPASCAL, us: { symbol: "psia", size: PSI.size } },
  flow: { metric: { symbol: "L/h", size: 1e-3 / 3600 }, us: { symbol: "gal/h", size: US_GALLON / 3600 } },
  temperature: {
    metric: { symbol: "°C", size: 1, zero: 273.15 },
    us: { symbol: "°F", size: 5 / 9, zero: 459.67 * (5 / 9) },
  },
  viscosity: { metric: { symbol: "mm²/s", size: 1e-6 }, us: { symbol: "cSt", size: 1e-6 } },
  density: { metric: { symbol: "kg/m³", size: 1 }, us: { symbol: "lb/gal", size: POUND / US_GALLON } },
  altitude: { metric: { symbol: "m", size: 1 }, us: { symbol: "ft", size: FOOT } },
  length: { metric: { symbol: "m", size: 1 }, us: { symbol: "ft", size: FOOT } },
  bore: { metric: { symbol: "mm", size: 1e-3 }, us: { symbol: "in", size: INCH } },
  "particle size": { metric: MICROMETRE, us: MICROMETRE },
  area: { metric: { symbol: "m²", size: 1 }, us: { symbol: "ft²", size: FOOT ** 2 } },
  power: { metric: { symbol: "kW", size: 1000 }, us: { symbol: "hp", size: HORSEPOWER } },
  "specific consumption": {
    metric: { symbol: "g/kWh", size: 1e-3 / 3.6e6 },
    us: { symbol: "lb/(hp h)", size: POUND / (HORSEPOWER * 3600) },
  },
  "dynamic viscosity": { metric: { symbol: "mPa s", size: 1e-3 }, us: { symbol: "cP", size: 1e-3 } },
  "running time": { metric: HOURS, us: HOURS },
  volume: { metric: { symbol: "L", size: 1e-3 }, us: { symbol: "gal", size: US_GALLON } },
  // A fluid ounce is a 128th of the gallon.
  "small volume": { metric: { symbol: "mL", size: 1e-6 }, us: { symbol: "fl oz", size: US_GALLON / 128 } },
  distance: { metric: { symbol: "km", size: 1000 }, us: { symbol: "mi", size: MILE } },
  "hours a day": { metric: HOURS_A_DAY, us: HOURS_A_DAY },
  "distance a day": {
    metric: { symbol: "km a day", size: 1000 / DAY },
    us: { symbol: "mi a day", size: MILE / DAY },
  },
  soil: { metric: GRAM, us: GRAM },
  solids: { metric: MILLIGRAM_A_LITRE, us: MILLIGRAM_A_LITRE },
  ratio: { metric: { symbol: "%", size: 0.01 }, us: { symbol: "%", size: 0.01 } },
  plain: { metric: { symbol: "", size: 1 }, us: { symbol: "", size: 1 } },
};

/** The unit a kind of quantity is shown in. */
export function unitOf(kind: QuantityKind, system: UnitSystem): ShownUnit {
  return units[kind][system];
}

/** SI unit of a kind of quantity, as JSON answers name it. */
export const siUnit: Readonly<Record<QuantityKind, string>> = {
  vacuum: "Pa",
  pressure: "Pa",
  "absolute pressure": "Pa",
  flow: "m3/s",
  temperature: "K",
  viscosity: "m2/s",
  density: "kg/m3",
  altitude: "m",
  length: "m",
  bore: "m",
  "particle size": "m",
  area: "m2",
  power: "W",
  "specific consumption": "kg/J",
  "dynamic viscosity": "Pa s",
  "running time": "s",
  volume: "m3",
  "small volume": "m3",
  distance: "m",
  "hours a day": "s/s",
  "distance a day": "m/s",
  soil: "kg",
  solids: "kg/m3",
  ratio: "1",
  plain: "1",
};
