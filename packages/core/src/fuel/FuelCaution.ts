import type { FuelProperty } from "./Fuel.js";

/**
 * What to know before relying on a fuel's figures, as plain data; temperatures in K.
 * "below range" and "above range" mean that no data back the figures given.
 */
export type FuelCaution =
  | {
      readonly code: "below cloud point";
      readonly temperature: number;
      readonly cloudPoint: number;
      readonly coldFilterPluggingPoint?: number;
      /** Whether the cloud point itself is a first estimate (a blend's). */
      readonly estimated: boolean;
    }
  /** Wax may be there: the cloud point is not known and it is colder than `limit`, the highest published for the kind. */
  | { readonly code: "cloud point not known"; readonly temperature: number; readonly limit: number }
  | { readonly code: "below range"; readonly temperature: number; readonly from: number }
  | { readonly code: "above range"; readonly temperature: number; readonly to: number }
  /** Colder or warmer than the viscosity was measured, yet inside what is known of the fuel's kind. */
  | {
      readonly code: "beyond measured points";
      readonly temperature: number;
      readonly from: number;
      readonly to: number;
    }
  /** A small part of a blend is outside its own data; it moves the blend little. */
  | {
      readonly code: "part outside range";
      readonly temperature: number;
      readonly part: string;
      readonly share: number;
      readonly from: number;
      readonly to: number;
    }
  | { readonly code: "estimated"; readonly properties: readonly FuelProperty[] }
  /** Free water turns to ice below 273.15 K. */
  | { readonly code: "water can freeze"; readonly temperature: number }
  /** No vapour pressure is known; it counts as 0. */
  | { readonly code: "no vapour pressure" };
