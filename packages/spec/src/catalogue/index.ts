export type { CatalogueElement } from "./CatalogueElement.js";
export type { CatalogueResult } from "./CatalogueResult.js";
export { catalogueBounds } from "./catalogueBounds.js";
export { columnHeads } from "./columns.js";
export { readCatalogue } from "./readCatalogue.js";
