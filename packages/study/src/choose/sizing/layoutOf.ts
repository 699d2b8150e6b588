import type { CatalogueElement } from "@thirstline/spec/system";
import type { Picked } from "./SearchKinds.js";
import type { Layout } from "./stack.js";

/** An arrangement with its elements instead of their places in the list. */
export function layoutOf(elements: readonly CatalogueElement[], { elements: picked, counts, bore }: Picked): Layout {
  const stages = picked.map((one, at) => ({
    element: elements[one] as CatalogueElement,
    count: counts[at] as number,
  }));
  return { stages, bore };
}
