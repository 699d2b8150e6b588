/**
 * The trade's units that the unit parser lacks or rounds, each in base SI units and exact where a definition exists.
 *
 * `value` is the size of one unit in the SI unit named by `si`, in the parser's own notation.
 */
export interface TradeUnit {
  /** How it is written, letters and digits only. */
  readonly name: string;
  /** SI unit its value is given in. */
  readonly si: string;
  /** Size of one of it, in that SI unit. */
  readonly value: number;
}

/** One litre, exact since 1964 (12th CGPM, resolution 6). */
const litre = 1e-3;
/** One international foot, exact (1959 agreement; NIST SP 811, appendix B). */
const foot = 0.3048;
/** One US liquid gallon: 231 cubic inches, exact (NIST SP 811, appendix B). */
const usGallon = 231 * 0.0254 ** 3;
/** Conventional millimetre of mercury: 13 595.1 kg/m3 x 9.80665 m/s2 x 1 mm, exact (ISO 31-3; NIST SP 811). */
const millimetreOfMercury = 133.322387415;
/** One pound-force on one square inch: 4.4482216152605 N over 6.4516e-4 m2, both exact (NIST SP 811). */
const poundPerSquareInch = 4.4482216152605 / 6.4516e-4;

/** Units added to the parser. */
export const addedUnits: readonly TradeUnit[] = [
  { name: "inHg", si: "Pa", value: 3386.388640341 }, // 25.4 conventional mmHg, exact
  { name: "inH2O", si: "Pa", value: 249.08891 }, // conventional: 1000 kg/m3 x 9.80665 m/s2 x 25.4 mm, exact
  { name: "St", si: "m^2/s", value: 1e-4 }, // stokes, exact (CGS)
  { name: "cSt", si: "m^2/s", value: 1e-6 },
  { name: "P", si: "Pa s", value: 0.1 }, // poise, exact (CGS)
  { name: "cP", si: "Pa s", value: 1e-3 },
  { name: "micron", si: "m", value: 1e-6 },
  { name: "thou", si: "m", value: 2.54e-5 }, // a thousandth of an inch, exact
  { name: "rpm", si: "Hz", value: 1 / 60 },
  { name: "lpm", si: "m^3/s", value: litre / 60 },
  { name: "lph", si: "m^3/s", value: litre / 3600 },
  { name: "gpm", si: "m^3/s", value: usGallon / 60 },
  { name: "gph", si: "m^3/s", value: usGallon / 3600 },
  { name: "cfm", si: "m^3/s", value: foot ** 3 / 60 },
  { name: "impgal", si: "m^3", value: 4.54609e-3 }, // exact (UK Weights and Measures Act 1985)
  { name: "PS", si: "W", value: 735.49875 }, // metric horsepower: 75 kgf m/s, exact
  { name: "hph", si: "J", value: 745.6998715822702 * 3600 }, // horsepower hour
  { name: "darcy", si: "m^2", value: 9.869232667160128e-13 }, // 1e-7 / 101 325, exact definition (API RP 27)
];

/** Units the parser has with too few figures, set to their full precision. */
export const refinedUnits: readonly TradeUnit[] = [
  { name: "psi", si: "Pa", value: poundPerSquareInch },
  { name: "mmHg", si: "Pa", value: millimetreOfMercury },
  { name: "torr", si: "Pa", value: 101325 / 760 }, // exact (14th CGPM definition of the atmosphere)
  { name: "floz", si: "m^3", value: usGallon / 128 }, // US fluid ounce, exact (NIST SP 811)
  { name: "hp", si: "W", value: 745.6998715822702 }, // 550 ft lbf/s, exact definition (NIST SP 811)
];
