import { formula } from "../Formula.js";

/** Geopotential altitude of a height. */
export const geopotential = formula({
  id: "geopotential-altitude",
  name: "Geopotential altitude",
  text: "r * h / (r + h)",
  symbols: { r: ["radius of the earth in the model", "m"], h: ["height above the sea", "m", "altitude"] },
  result: ["H", "geopotential altitude", "m", "altitude"],
  holds: "the standard atmosphere",
  accuracy: "exact in the model",
  source: "US Standard Atmosphere 1976",
  checkedBy: ["atmosphere/standard-1976"],
});

/** Pressure of the standard atmosphere. */
export const airPressure = formula({
  id: "air-pressure",
  name: "Air pressure of the standard atmosphere",
  text: "p_0 * (1 - B * H / T_0)^(g * M / (R * B))",
  symbols: {
    p_0: ["air pressure at the sea", "Pa", "absolute pressure"],
    B: ["fall of temperature with height", "K/m"],
    H: ["geopotential altitude", "m", "altitude"],
    T_0: ["temperature at the sea", "K"],
    g: ["acceleration of free fall", "m/s2"],
    M: ["molar mass of air", "kg/mol"],
    R: ["gas constant of the model", "J/(mol K)"],
  },
  result: ["p_a", "air pressure", "Pa", "absolute pressure"],
  holds: "-500 to 11 000 m",
  accuracy: "weather moves the real pressure by about 3 % either way (common practice, no source)",
  source: "US Standard Atmosphere 1976",
  checkedBy: ["atmosphere/standard-1976", "atmosphere/handbook"],
});
