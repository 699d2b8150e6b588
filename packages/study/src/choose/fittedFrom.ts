import type { CatalogueElement, SystemFilter } from "@thirstline/spec/system";

/** The element of a catalogue that a filter is, going by its medium, betas and capacity test; null when none is like it. */
export function fittedFrom(filter: SystemFilter, catalogue: readonly CatalogueElement[]): CatalogueElement | null {
  const looks = looksOf(filter);
  return catalogue.find((element) => looksOf(element.filter) === looks) ?? null;
}

function looksOf({ style, medium, betas, capacityTest, area }: SystemFilter): string {
  const rounded = (_: string, value: unknown) => (typeof value === "number" ? Number(value.toPrecision(9)) : value);
  return JSON.stringify([style ?? null, medium, betas ?? null, capacityTest ?? null, area ?? null], rounded);
}
