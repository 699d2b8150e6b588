import type { CatalogueElement } from "@thirstline/spec/system";

/** A catalogue as the page has it. */
export interface Catalogue {
  /** name of the file; null for the invented one that comes with the page */
  readonly file: string | null;
  readonly elements: readonly CatalogueElement[];
}
