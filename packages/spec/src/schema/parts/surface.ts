import type { Report } from "../also.js";

/**
 * Roughness of a new surface, m. White, Fluid Mechanics (7th ed.), table 6.1, and Moody, Trans. ASME 66 (1944) 671, as
 * reproduced publicly; White gives +-60 % for rubber.
 */
export const surfaces = {
  "drawn tubing": 1.5e-6,
  copper: 1.5e-6, // drawn
  brass: 1.5e-6, // drawn
  plastic: 1.5e-6,
  glass: 0, // "smooth"
  stainless: 2e-6,
  "rubber hose": 1e-5,
  steel: 4.6e-5,
  "asphalted iron": 1.2e-4,
  galvanized: 1.5e-4,
  "cast iron": 2.6e-4,
} as const satisfies Record<string, number>;

/** Name of a surface whose roughness is published. */
export type Surface = keyof typeof surfaces;

/** The surfaces' names. */
export const surfaceNames = Object.keys(surfaces) as Surface[];

/** Greatest roughness, in bores, for which the friction law is published (Moody's chart ends there). */
const mostRough = 0.05;

interface Wall {
  readonly surface?: Surface | undefined;
  readonly roughness?: number | undefined;
  readonly bore?: number | undefined;
}

/** Height of the wall's roughness, m, from its stated figure or its surface; NaN when neither was stated. */
export function roughnessOf(wall: Wall): number {
  return wall.roughness ?? (wall.surface === undefined ? Number.NaN : surfaces[wall.surface]);
}

/** Faults a wall that is stated twice or not at all, or is rougher than the friction law knows. */
export function checkWall(wall: Wall, report: Report): void {
  const { bore, roughness } = wall;
  if (roughness !== undefined && "surface" in wall) {
    report(["roughness"], "stated twice", "the surface says how rough the wall is already; leave one of the two out");
  }
  if (roughness === undefined && !("surface" in wall)) {
    report(["surface"], "missing", `missing; write the surface (one of ${surfaceNames.join(", ")}) or a roughness`);
  }
  const rough = roughnessOf(wall);
  if (bore !== undefined && rough > mostRough * bore) {
    const path = roughness === undefined ? "surface" : "roughness";
    report([path], "out of range", `rougher than 1/20 of the bore; check the ${path} and the bore`);
  }
}
