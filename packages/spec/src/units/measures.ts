import { type ParsedUnit, parseUnit } from "./unitParser.js";

/** What can be measured, in words, each with a unit of it; the first that fits names a unit in a fault. */
const measures: readonly (readonly [words: string, unit: string])[] = [
  ["a length", "m"],
  ["an area", "m^2"],
  ["a volume", "m^3"],
  ["a flow", "m^3/s"],
  ["a mass", "kg"],
  ["a mass flow", "kg/s"],
  ["a density", "kg/m^3"],
  ["a pressure", "Pa"],
  ["a temperature", "K"],
  ["a kinematic viscosity", "m^2/s"],
  ["a dynamic viscosity", "Pa s"],
  ["a time", "s"],
  ["a speed", "m/s"],
  ["a speed of rotation", "Hz"],
  ["a power", "W"],
  ["an energy", "J"],
  ["a force", "N"],
  ["a fuel consumption per work", "kg/J"],
  ["a number per length", "m^-1"],
  ["a pressure per length", "Pa/m"],
  ["a mass per area", "kg/m^2"],
  ["a pure number", "m/m"],
];

/** What a unit measures, in words: "a length" for inches. */
export function measureOf(unit: ParsedUnit): string {
  const found = measures.find(([, of]) => unit.equalBase(parseUnit(of)));
  return found === undefined ? "something else" : found[0];
}
