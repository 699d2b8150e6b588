/**
 * What one kind of quantity is: what it is called, the SI unit it is kept in, and the range in which it makes sense.
 * The range is one of sense, not of law: outside it a misplaced unit or digit is far likelier than a real machine.
 */
export interface Kind {
  /** As a sentence names it: "a bore". */
  readonly words: string;
  /** What its unit must measure: "a length". */
  readonly measure: string;
  /** SI unit it is kept in, as the unit parser writes it. */
  readonly si: string;
  /** Least value taken. */
  readonly least: string;
  /** Greatest value taken. */
  readonly most: string;
  /** A usual one; also the unit named when one is missing. */
  readonly example: string;
}

function ofMeasure<Measure extends string>(measure: Measure, si: string) {
  return (words: string, least: string, most: string, example: string): Kind => ({
    words,
    measure,
    si,
    least,
    most,
    example,
  });
}

const length = ofMeasure("a length", "m");
const area = ofMeasure("an area", "m^2");
const volume = ofMeasure("a volume", "m^3");
const flow = ofMeasure("a flow", "m^3/s");
const pressure = ofMeasure("a pressure", "Pa");
const temperature = ofMeasure("a temperature", "K");
const density = ofMeasure("a density", "kg/m^3");
const time = ofMeasure("a time", "s");

/** Every kind of quantity a system file holds. */
export const kinds = {
  length: length("a length", "1 mm", "1 km", "6 m"),
  bore: length("a bore", "0.5 mm", "300 mm", "10 mm"),
  diameter: length("a diameter", "0.05 mm", "300 mm", "2 mm"),
  roughness: length("a roughness", "0 mm", "5 mm", "0.0015 mm"),
  height: length("a height", "-100 m", "100 m", "0.9 m"),
  depth: length("a depth", "0 m", "50 m", "1.1 m"),
  thickness: length("a thickness", "0.01 mm", "100 mm", "0.6 mm"),
  gap: length("a gap", "0.01 mm", "50 mm", "0.5 mm"),
  pleatDepth: length("a pleat depth", "1 mm", "500 mm", "15 mm"),
  betaSize: length("a particle size of a beta ratio", "1 um", "100 um", "10 um"),
  size: length("a particle size", "0.5 um", "1000 um", "10 um"),
  aperture: length("an aperture", "5 um", "20 mm", "150 um"),
  wire: length("a wire diameter", "5 um", "5 mm", "100 um"),
  fibre: length("a fibre diameter", "0.05 um", "500 um", "5 um"),
  altitude: length("an altitude", "-450 m", "6000 m", "350 m"),
  odometer: length("a distance", "0 km", "10000000 km", "10000 km"),
  distance: length("a distance", "1 km", "2000000 km", "15000 km"),
  area: area("an area", "0.1 cm2", "100 m2", "0.5 m2"),
  permeability: ofMeasure("an area", "m^2")("a permeability", "1e-17 m2", "1e-7 m2", "2e-13 m2"),
  inertia: ofMeasure("a number per length", "m^-1")("an inertial coefficient", "0 1/m", "1e12 1/m", "2e5 1/m"),
  bowl: volume("a bowl's volume", "1 mL", "1000 L", "0.3 L"),
  body: volume("a body's volume", "1 mL", "1000 L", "0.9 L"),
  stroke: volume("a stroke's volume", "0.1 mL", "10 L", "12 mL"),
  absorbedWater: volume("a volume of water", "0.1 mL", "100 L", "200 mL"),
  volume: volume("a volume", "1 mL", "10000 m3", "60 L"),
  flow: flow("a flow", "0.01 L/h", "500 m3/h", "200 L/h"),
  flowOrNone: flow("a flow", "0 L/h", "500 m3/h", "200 L/h"),
  airFlow: flow("an air flow", "0.001 L/min", "100 m3/min", "10 cfm"),
  kv: flow("a flow coefficient Kv", "0.001 m3/h", "10000 m3/h", "1.2 m3/h"),
  drop: pressure("a pressure drop", "0.1 Pa", "5 MPa", "2 kPa"),
  opening: pressure("an opening pressure", "0 Pa", "1 MPa", "2 kPa"),
  pressure: pressure("a pressure", "1 Pa", "5 MPa", "80 kPa"),
  vacuum: pressure("a vacuum", "0.1 kPa", "101.325 kPa", "20 kPa"),
  gaugeReading: pressure("a gauge reading", "0 kPa", "101.325 kPa", "14 kPa"),
  vacuumRead: pressure("a vacuum reading", "-100 kPa", "101.325 kPa", "14 kPa"),
  pressureRead: pressure("a feed pressure reading", "-101.325 kPa", "5 MPa", "45 kPa"),
  gaugeError: pressure("a gauge's error", "1 Pa", "100 kPa", "0.5 kPa"),
  vapourPressure: pressure("a vapour pressure", "0 Pa", "200 kPa", "60 kPa"),
  temperature: temperature("a fuel temperature", "-60 degC", "100 degC", "15 degC"),
  coldPoint: temperature("a cold-flow temperature", "-80 degC", "40 degC", "-16 degC"),
  kinematicViscosity: ofMeasure("a kinematic viscosity", "m^2/s")("a viscosity", "0.25 mm2/s", "2000 mm2/s", "3 mm2/s"),
  dynamicViscosity: ofMeasure("a dynamic viscosity", "Pa s")("a viscosity", "0.1 mPa s", "2000 mPa s", "2.5 mPa s"),
  density: density("a density", "600 kg/m3", "1100 kg/m3", "830 kg/m3"),
  concentration: density("a concentration", "0 mg/L", "10000 mg/L", "150 mg/L"),
  mass: ofMeasure("a mass", "kg")("a mass", "0.01 g", "100 kg", "40 g"),
  power: ofMeasure("a power", "W")("a power", "0.1 kW", "50 MW", "450 kW"),
  specificConsumption: ofMeasure("a fuel consumption per work", "kg/J")(
    "a specific consumption",
    "100 g/kWh",
    "2000 g/kWh",
    "210 g/kWh",
  ),
  runningTime: time("a running time", "0 h", "1000000 h", "1200 h"),
  calendar: time("a calendar time", "1 day", "20 years", "12 months"),
  duration: time("a running time", "0.1 h", "100000 h", "250 h"),
  labour: time("a working time", "0 min", "1000 h", "15 min"),
} as const satisfies Record<string, Kind>;

/** Name of a kind of quantity. */
export type KindName = keyof typeof kinds;
