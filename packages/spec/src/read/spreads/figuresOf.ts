import type { Path } from "../RawFault.js";

/** A figure of a system with its place. */
export interface Figure {
  readonly path: Path;
  readonly value: number;
}

/** Every figure of a system, by its path as one text, in the system's order. */
export function figuresOf(system: unknown): ReadonlyMap<string, Figure> {
  const figures = new Map<string, Figure>();
  const visit = (value: unknown, path: Path): void => {
    if (typeof value === "number") figures.set(JSON.stringify(path), { path, value });
    if (typeof value !== "object" || value === null) return;
    for (const [key, inner] of Object.entries(value)) visit(inner, [...path, Array.isArray(value) ? Number(key) : key]);
  };
  visit(system, []);
  return figures;
}
