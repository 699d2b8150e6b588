/**
 * Every unit a system file may use, by what it measures. The parser knows hundreds more (a beer barrel is its "bbl"), and
 * any that is not here is refused with the nearest that is: a mistyped unit must never become another one.
 */
const wordsByMeasure = {
  length: "m km cm mm um micron microns in inch inches ft foot feet yd mi mile miles mil thou",
  volume: "L l litre litres liter liters cL mL ml cc gal gallon gallons impgal qt pt floz",
  time: "s sec second seconds min minute minutes h hr hrs hour hours day days week weeks month months year years",
  mass: "kg g gram grams mg ug t tonne tonnes lb lbs oz",
  pressure: "Pa mPa hPa kPa MPa mbar bar psi atm torr mmHg inHg mmH2O cmH2O inH2O",
  power: "W kW MW hp PS",
  energy: "J kJ MJ Wh kWh MWh BTU hph",
  force: "N kN kgf lbf",
  temperature: "degC degF K",
  viscosity: "P cP St cSt",
  flow: "lpm lph gpm gph cfm",
  permeability: "darcy",
  speed: "rpm Hz",
};

/** The units known here. */
export const unitWords: ReadonlySet<string> = new Set(Object.values(wordsByMeasure).join(" ").split(" "));

/** What the parser calls a word, where it calls it otherwise. */
export const parserNames: Readonly<Record<string, string>> = { microns: "micron" };

/** Words people write for a unit known here under another name. */
export const meantWords: Readonly<Record<string, string>> = {
  C: "degC",
  F: "degF",
  deg: "degC",
  celsius: "degC",
  Celsius: "degC",
  centigrade: "degC",
  fahrenheit: "degF",
  Fahrenheit: "degF",
  kelvin: "K",
  ltr: "L",
  lit: "L",
  ccm: "cc",
  sqm: "m2",
  cbm: "m3",
  mu: "um",
  mic: "micron",
  gals: "gal",
  kilo: "kg",
  kilos: "kg",
  kgs: "kg",
  ton: "t",
  tons: "t",
  lbm: "lb",
  psig: "psi",
  psia: "psi",
  barg: "bar",
  bara: "bar",
  kp: "kgf",
  HP: "hp",
  bhp: "hp",
  centistokes: "cSt",
  centipoise: "cP",
  stokes: "St",
  poise: "P",
};
