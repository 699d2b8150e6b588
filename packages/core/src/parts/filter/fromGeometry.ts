import { requireAtLeast, requireMoreThan } from "../../require.js";
import { exactly } from "../Band.js";
import type { Medium } from "./Medium.js";

/** A medium by its measured geometry. */
export interface MediumGeometry {
  /** m2 */
  readonly area: number;
  /** m */
  readonly thickness: number;
  /** m2 */
  readonly permeability: number;
  /** Forchheimer's inertial coefficient, 1/m; none when left out */
  readonly inertia?: number;
}

/**
 * Darcy's law, with Forchheimer's term when an inertial coefficient is given:
 * drop/thickness = viscosity/permeability * velocity + inertia * density * velocity^2.
 *
 * @see J. Bear, Dynamics of Fluids in Porous Media (1972); P. Forchheimer, Z. Ver. Dtsch. Ing. 45 (1901) 1782
 */
export function fromGeometry(media: MediumGeometry): Medium {
  const { area, thickness, permeability, inertia = 0 } = media;
  requireMoreThan("filter", "media.area", area, 0, "m2");
  requireMoreThan("filter", "media.thickness", thickness, 0, "m");
  requireMoreThan("filter", "media.permeability", permeability, 0, "m2");
  requireAtLeast("filter", "media.inertia", inertia, 0, "1/m");
  return {
    source: "geometry",
    linear: exactly(thickness / (permeability * area)),
    quadratic: (inertia * thickness) / (area * area),
  };
}
