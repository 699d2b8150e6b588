import type { Fault } from "../read/Fault.js";
import type { CatalogueElement } from "./CatalogueElement.js";

/** A catalogue's elements in order, or everything that is wrong with it. */
export type CatalogueResult =
  | { readonly elements: readonly CatalogueElement[] }
  | { readonly faults: readonly Fault[] };
