import { requireBetween, requireMoreThan } from "../../require.js";
import { fibreLaws } from "../fibre/index.js";
import type { Medium } from "./Medium.js";

/** A fibre mat by its make. */
export interface FibreMat {
  /** fibre diameter, m */
  readonly diameter: number;
  /** share of the volume that is fibre */
  readonly solidity: number;
  /** of the medium, m2 */
  readonly area: number;
  /** of the medium, m */
  readonly thickness: number;
}

/**
 * An estimate of a medium from its fibres: the published laws for flow through a mat, lowest to highest as the band and
 * their geometric mean between. At a solidity of 0.1 they differ by 2.6, at 0.05 by 3.8.
 *
 * @see fibreLaws for each law and its source
 */
export function fromFibres(mat: FibreMat): Medium {
  requireMoreThan("filter", "fibre.diameter", mat.diameter, 0, "m");
  requireBetween("filter", "fibre.solidity", mat.solidity, { from: 0.006, to: 0.3 });
  requireMoreThan("filter", "fibre.area", mat.area, 0, "m2");
  requireMoreThan("filter", "fibre.thickness", mat.thickness, 0, "m");
  const radius = mat.diameter / 2;
  const resistances = Object.values(fibreLaws).map(
    (law) => mat.thickness / (law(mat.solidity) * radius * radius * mat.area),
  );
  const low = Math.min(...resistances);
  const high = Math.max(...resistances);
  return { source: "fibre law", linear: { low, middle: Math.sqrt(low * high), high }, quadratic: 0 };
}
