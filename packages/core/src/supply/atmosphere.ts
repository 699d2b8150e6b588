import { InputError } from "../InputError.js";
import { requireBetween } from "../require.js";

/** Geopotential altitude takes gravity as constant; geometric is height as measured. At 5 km they differ by 4 m. */
export type AltitudeKind = "geopotential" | "geometric";

/**
 * Pressure of the standard atmosphere at an altitude. All a suction pump can draw on: a tenth less at 900 m.
 *
 * The troposphere of the model, -500 to 11000 m. Weather moves the real pressure by about 3 % either way (common
 * practice, no source).
 *
 * @param altitude m above sea level
 * @param kind geopotential unless stated
 * @returns Pa, absolute
 * @throws InputError beyond -500 to 11000 m
 * @see US Standard Atmosphere 1976: T = 288.15 K - 6.5 K/km, M 28.9644 kg/kmol, R 8.31432e3 J/(kmol K), g0 9.80665 m/s2
 * @example
 * atmosphere(2400) // 75.6e3
 */
export function atmosphere(altitude: number, kind: AltitudeKind = "geopotential"): number {
  requireBetween("atmosphere", "altitude", altitude, { from: -500, to: 11000 }, "m");
  if (kind !== "geopotential" && kind !== "geometric") {
    throw new InputError("atmosphere", "kind", "one of geopotential, geometric", kind);
  }
  const earthRadius = 6356766; // m, of the model
  const geopotential = kind === "geopotential" ? altitude : (earthRadius * altitude) / (earthRadius + altitude);
  const lapse = 0.0065; // K/m
  const exponent = (9.80665 * 28.9644) / (8314.32 * lapse); // 5.25588
  return 101325 * (1 - (lapse * geopotential) / 288.15) ** exponent;
}
