import { InputError } from "../InputError.js";
import { requireAtLeast, requireMoreThan } from "../require.js";
import { type Named, nameOf } from "./Named.js";

/** A valve by its flow coefficient; a check valve when it is one-way. */
export interface Valve extends Named {
  readonly kind: "valve";
  /** pressure at which it opens, Pa */
  readonly opening: number;
  /** flow coefficient Kv: flow of water of 1000 kg/m3 at a drop of 1 bar, m3/s */
  readonly kv: number;
  /** whether it shuts against backward flow */
  readonly oneWay: boolean;
}

/**
 * A check valve, or with `oneWay: false` a plain valve. Its drop is the opening pressure and a term in flow squared.
 *
 * The opening pressure is counted at every forward flow: a spring that keeps pushing is the safe reading.
 *
 * @param given opening, Pa (0 when left out); kv, m3/s of water at 1 bar; oneWay (true when left out)
 * @throws InputError naming the field; a two-way valve has no opening pressure
 * @see IEC 60534-1 and -2-1 for Kv
 * @example
 * valve({ opening: 2000, kv: 1.2 / 3600 })
 */
export function valve(
  given: { readonly opening?: number; readonly kv: number; readonly oneWay?: boolean } & Named,
): Valve {
  const opening = given.opening ?? 0;
  const oneWay = given.oneWay ?? true;
  requireAtLeast("valve", "opening", opening, 0, "Pa");
  requireMoreThan("valve", "kv", given.kv, 0, "m3/s");
  if (!oneWay && opening > 0) throw new InputError("valve", "opening", "0 Pa in a two-way valve", opening);
  return { kind: "valve", ...nameOf(given), opening, kv: given.kv, oneWay };
}
