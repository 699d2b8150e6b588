import type { TwoKKind } from "@thirstline/core";
import type { SystemFilter } from "./Filter.js";

/** A straight, full, round line. */
export interface SystemLine {
  readonly part: "line";
  readonly name: string;
  /** m */
  readonly length: number;
  /** inner diameter, m */
  readonly bore: number;
  /** height of the wall's roughness, m */
  readonly roughness: number;
  /** the surface the roughness was taken from, when it was not stated itself */
  readonly surface?: string;
}

/** How a fitting's loss was stated. */
export type SystemFittingLoss =
  /** in velocity heads, the same at any flow */
  | { readonly by: "k"; readonly k: number }
  /** a row of core's `twoKConstants` */
  | { readonly by: "two-K"; readonly row: TwoKKind }
  /** length of line that costs as much, in bores, with that line's roughness, m */
  | { readonly by: "equivalent length"; readonly bores: number; readonly roughness: number };

/** Elbows, tees, cocks and the like, all alike and one after another. */
export interface SystemFitting {
  readonly part: "fitting";
  readonly name: string;
  /** bore the loss refers to, m */
  readonly bore: number;
  /** how many */
  readonly count: number;
  /** as the file calls it, such as "elbow 90"; left out when the loss was stated in figures */
  readonly kind?: string;
  readonly loss: SystemFittingLoss;
}

/** A change of height. */
export interface SystemRise {
  readonly part: "rise";
  readonly name: string;
  /** how far the path climbs, m; negative where it falls */
  readonly height: number;
}

/** A valve by its flow coefficient. */
export interface SystemValve {
  readonly part: "valve";
  readonly name: string;
  /** flow coefficient Kv: water through it at a drop of 1 bar, m3/s */
  readonly kv: number;
  /** pressure at which it opens, Pa */
  readonly opening: number;
  /** whether it shuts against backward flow */
  readonly oneWay: boolean;
}

/** A sharp restriction. */
export interface SystemOrifice {
  readonly part: "orifice";
  readonly name: string;
  /** m */
  readonly diameter: number;
  /** pure number, 0 to 1 */
  readonly dischargeCoefficient: number;
}

/** A woven wire screen. */
export interface SystemStrainer {
  readonly part: "strainer";
  readonly name: string;
  /** clear opening between wires, m */
  readonly aperture: number;
  /** wire diameter, m */
  readonly wire: number;
  /** screen area, m2 */
  readonly area: number;
}

/** Branches side by side; each is a list of parts one after another. */
export interface SystemBank {
  readonly part: "bank";
  readonly name: string;
  /** two or more */
  readonly branches: readonly (readonly SystemPart[])[];
}

/** One part of a path. */
export type SystemPart =
  | SystemLine
  | SystemFitting
  | SystemRise
  | SystemValve
  | SystemOrifice
  | SystemStrainer
  | SystemFilter
  | SystemBank;
