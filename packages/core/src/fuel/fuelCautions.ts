import type { Fuel } from "./Fuel.js";
import type { FuelCaution } from "./FuelCaution.js";
import { icePoint } from "./units.js";

// A temperature typed in degC or degF arrives with rounding; on the border itself there is nothing to warn of.
const tolerance = 1e-6; // K

/** What to know of a fuel at a temperature, K, before relying on its figures. */
export function fuelCautions(fuel: Fuel, temperature: number): readonly FuelCaution[] {
  const below = (bound: number) => temperature < bound - tolerance;
  const above = (bound: number) => temperature > bound + tolerance;
  const { range, measured, cloudPoint, cloudPointLimit, coldFilterPluggingPoint } = fuel;
  const cautions: FuelCaution[] = [];

  if (below(range.from)) cautions.push({ code: "below range", temperature, from: range.from });
  if (above(range.to)) cautions.push({ code: "above range", temperature, to: range.to });
  if (measured !== undefined && (below(measured.from) || above(measured.to))) {
    cautions.push({ code: "beyond measured points", temperature, ...measured });
  }
  if (cloudPoint !== undefined) {
    if (below(cloudPoint)) {
      const estimated = fuel.estimated.includes("cloud point");
      const plugging = coldFilterPluggingPoint === undefined ? {} : { coldFilterPluggingPoint };
      cautions.push({ code: "below cloud point", temperature, cloudPoint, ...plugging, estimated });
    }
  } else if (cloudPointLimit !== undefined && below(cloudPointLimit)) {
    cautions.push({ code: "cloud point not known", temperature, limit: cloudPointLimit });
  }
  for (const { name, share, range: own } of fuel.minorParts ?? []) {
    if (below(own.from) || above(own.to)) {
      cautions.push({ code: "part outside range", temperature, part: name, share, ...own });
    }
  }
  // A typical cloud point is worth a word only where the fuel could be cloudy at all.
  const mayCloud = cloudPoint !== undefined && (cloudPointLimit === undefined || below(cloudPointLimit));
  const properties = fuel.estimated.filter((property) => property !== "cloud point" || mayCloud);
  if (properties.length > 0) cautions.push({ code: "estimated", properties });
  if (below(icePoint)) cautions.push({ code: "water can freeze", temperature });
  if (fuel.vapourPressure.kind === "none") cautions.push({ code: "no vapour pressure" });
  return cautions;
}
