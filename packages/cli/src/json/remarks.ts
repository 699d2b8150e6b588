import type { Caution, Reason } from "@thirstline/study";
import { figure } from "./figure.js";

type FuelCaution = Extract<Caution, { code: "fuel" }>["caution"];
type AnyRemark = Caution | Reason | FuelCaution;

/** Names of the fields of a union's members that hold a number. */
type NumberField<T> = T extends unknown ? { [Key in keyof T]-?: number extends T[Key] ? Key : never }[keyof T] : never;

/** Unit of every figure a reason or caution carries. */
const units: Readonly<Record<NumberField<AnyRemark>, string>> = {
  reynolds: "1",
  factor: "1",
  altitude: "m",
  ambientPressure: "Pa",
  margin: "Pa",
  pressure: "Pa",
  share: "1",
  vacuum: "Pa",
  flow: "m3/s",
  drop: "Pa",
  terminalDrop: "Pa",
  temperature: "K",
  cloudPoint: "K",
  coldFilterPluggingPoint: "K",
  limit: "K",
  from: "K",
  to: "K",
};

/** A reason or caution with a unit to each of its figures. */
export function remark(given: AnyRemark): Record<string, unknown> {
  const fields = Object.entries(given).map(([name, value]): [string, unknown] => {
    if (typeof value === "number") return [name, figure(value, units[name as keyof typeof units], "no bound")];
    return [name, name === "caution" ? remark(value as FuelCaution) : value];
  });
  return Object.fromEntries(fields);
}
