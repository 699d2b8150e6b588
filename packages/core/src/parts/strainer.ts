import { requireMoreThan } from "../require.js";
import { type Named, nameOf } from "./Named.js";

/** A woven wire screen across the flow, as sits in many a tank. */
export interface Strainer extends Named {
  readonly kind: "strainer";
  /** clear opening between wires, m */
  readonly aperture: number;
  /** wire diameter, m */
  readonly wire: number;
  /** screen area, m2 */
  readonly area: number;
}

/**
 * A strainer of plain square wire cloth. The published screen laws differ by about 2.5 at the slow flows of a fuel
 * strainer, so its drop is a band: the lowest law, a middle one, the highest.
 *
 * @param given aperture, m; wire, m; area, m2
 * @throws InputError naming the field
 * @see the three laws under `screen`
 * @example
 * strainer({ aperture: 425e-6, wire: 280e-6, area: 0.002 })
 */
export function strainer(given: Omit<Strainer, "kind">): Strainer {
  requireMoreThan("strainer", "aperture", given.aperture, 0, "m");
  requireMoreThan("strainer", "wire", given.wire, 0, "m");
  requireMoreThan("strainer", "area", given.area, 0, "m2");
  const { aperture, wire, area } = given;
  return { kind: "strainer", ...nameOf(given), aperture, wire, area };
}
