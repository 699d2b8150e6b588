import { psi } from "../units.js";
import type { VapourPressureLaw } from "../vapourPressureAt.js";

// AP-42 chapter 7.1 gives ln P = A - B/T with P in psia and T in degrees Rankine, 1.8 to the kelvin.

/** Diesel: distillate fuel oil no. 2, A 12.101, B 8907 (AP-42 table 7.1-2; from memory). */
export const distillateVapourPressure: VapourPressureLaw = {
  kind: "two constants",
  a: 12.101 + Math.log(psi),
  b: 8907 / 1.8,
};

/** Jet kerosene, A 12.390, B 8933 (AP-42 table 7.1-2; from memory). */
export const keroseneVapourPressure: VapourPressureLaw = {
  kind: "two constants",
  a: 12.39 + Math.log(psi),
  b: 8933 / 1.8,
};
