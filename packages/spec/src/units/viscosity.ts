import { type KindName, kinds } from "./kinds.js";
import { quantity } from "./quantity.js";
import type { QuantityFault } from "./quantityFault.js";
import { spreadQuantity } from "./spreadQuantity.js";

/** A viscosity as it was stated: kinematic, m2/s, or dynamic, Pa s. */
export type Viscosity = { readonly kinematic: number } | { readonly dynamic: number };

/**
 * Reads a viscosity, kinematic ("3 mm2/s") or dynamic ("2.5 mPa s"), and says which it was: one turns into the other by
 * the density only. Of a spread the middle is taken, as `spreadQuantity` does.
 */
export function viscosity(text: string): Viscosity | { readonly fault: QuantityFault } {
  const readAs = (kind: KindName) => spreadQuantity(text, kind) ?? quantity(text, kind);
  const kinematic = readAs("kinematicViscosity");
  if ("value" in kinematic) return { kinematic: kinematic.value };
  if (kinematic.fault.code !== "wrong measure") return kinematic;
  const dynamic = readAs("dynamicViscosity");
  if ("value" in dynamic) return { dynamic: dynamic.value };
  if (dynamic.fault.code !== "wrong measure") return dynamic;
  // Neither: both are said to be welcome.
  const wanted = kinematic.fault.message.replace("a kinematic viscosity is wanted", "a viscosity is wanted");
  const message = `${wanted} or "${kinds.dynamicViscosity.example}"`;
  return { fault: { code: "wrong measure", message } };
}
