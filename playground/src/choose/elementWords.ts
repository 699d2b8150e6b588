import type { CatalogueElement } from "@thirstline/spec/system";

/** How fine an element is, in few words: its last beta, or what its maker calls it; "" where nothing is stated. */
export function finenessOf({ filter: { betas, statedRating, medium } }: CatalogueElement): string {
  const microns = (size: number) => `${Number((size * 1e6).toPrecision(3))} µm`;
  const last = betas?.at(-1);
  if (last) return `beta ${last.beta} at ${microns(last.size)}`;
  const rating = statedRating ?? (medium.by === "rating" ? medium : undefined);
  return rating ? `${microns(rating.size)} ${rating.kind}` : "";
}

/** All that an element may be looked for by, in small letters. */
export function soughtOf(element: CatalogueElement): string {
  const { name, filter } = element;
  const sizes = (filter.betas ?? []).map(
    ({ beta, size }) => `beta ${beta} at ${Number((size * 1e6).toPrecision(3))} µm um`,
  );
  return [name, filter.style, filter.thread, finenessOf(element), ...sizes].join(" ").toLowerCase();
}
