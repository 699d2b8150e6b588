import type { Scene } from "../scene/Scene.js";

/** Where a property of the fuel comes from: what its sources say of it, or all they say. */
export function fuelSource({ built }: Scene, property: "density" | "viscosity" | "vapour pressure"): string {
  const own = built.fuel.sources.filter((source) => source.toLowerCase().includes(property));
  const said = own.length > 0 ? own : built.fuel.sources;
  return said.length > 0 ? said.join("; ") : "common practice, no source";
}
