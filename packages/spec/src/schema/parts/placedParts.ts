import type { PartData } from "./PartData.js";

/** The paths of a file, as far as they could be read. */
export interface Paths {
  readonly suction?: PartData[] | undefined;
  readonly delivery?: PartData[] | undefined;
  readonly tanks?: readonly { readonly path: PartData[] }[] | undefined;
}

/** A part with its place in the file. */
export interface PlacedPart {
  readonly part: PartData;
  readonly at: readonly (string | number)[];
}

/** Every part of a file in the order fuel meets them, banks included; what could not be read as a part is passed over. */
export function placedParts(data: Paths): PlacedPart[] {
  const tanks = listOf(data.tanks).flatMap((tank, index) =>
    inPath((tank as { path?: unknown } | null)?.path, ["tanks", index, "path"]),
  );
  return [...tanks, ...inPath(data.suction, ["suction"]), ...inPath(data.delivery, ["delivery"])];
}

function inPath(parts: unknown, at: readonly (string | number)[]): PlacedPart[] {
  return listOf(parts).flatMap((part, index): PlacedPart[] => {
    if (typeof part !== "object" || part === null) return [];
    const here = { part: part as PartData, at: [...at, index] };
    const branches = listOf(here.part.bank);
    return [here, ...branches.flatMap((branch, way) => inPath(branch, [...here.at, "bank", way]))];
  });
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
