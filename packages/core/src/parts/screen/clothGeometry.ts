import { requireMoreThan } from "../../require.js";

/** A plain square woven wire cloth, as its data sheet gives it. */
export interface Cloth {
  /** Clear opening between neighbouring wires, m. */
  readonly aperture: number;
  /** Wire diameter, m. */
  readonly wire: number;
}

/** What the screen laws need to know of a cloth. */
export interface ClothGeometry {
  /** Centre to centre of neighbouring wires, m. */
  readonly pitch: number;
  /** Share of the face seen open from the front, no unit. */
  readonly openArea: number;
  /** Share of the cloth's volume that is not wire, no unit. */
  readonly porosity: number;
  /** Wire surface per volume of cloth, 1/m. */
  readonly surface: number;
  /** Thickness, two wires, m. */
  readonly thickness: number;
}

/**
 * Open area, porosity, wire surface and thickness of a plain square woven cloth from its opening and wire.
 * Mesh number alone does not fix them: the same mesh is sold with several wires.
 *
 * Holds for plain weave with round, undeformed wires that cross without flattening; not for twill, Dutch weave or
 * pressed cloth. Exact for that shape.
 *
 * @param cloth aperture and wire diameter, m, both more than 0
 * @returns pitch and thickness, m; open area and porosity, no unit; wire surface per volume, 1/m
 * @throws InputError naming `aperture` or `wire`
 * @see W. J. Armour and J. N. Cannon, AIChE J. 14 (1968) 415
 * @example
 * clothGeometry({ aperture: 150e-6, wire: 100e-6 }).openArea // 0.36
 */
export function clothGeometry(cloth: Cloth): ClothGeometry {
  requireMoreThan("clothGeometry", "aperture", cloth.aperture, 0, "m");
  requireMoreThan("clothGeometry", "wire", cloth.wire, 0, "m");
  const pitch = cloth.aperture + cloth.wire;
  // A wire climbs one diameter per pitch to pass over its neighbour, so it is longer than its run by this factor.
  const lengthening = Math.hypot(1, cloth.wire / pitch);
  return {
    pitch,
    openArea: (cloth.aperture / pitch) ** 2,
    porosity: 1 - ((Math.PI / 4) * cloth.wire * lengthening) / pitch,
    surface: (Math.PI * lengthening) / pitch,
    thickness: 2 * cloth.wire,
  };
}
