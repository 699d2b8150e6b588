export { type Built, type BuiltTank, build } from "./build/build.js";
export { withDraw } from "./build/withDraw.js";
export type { CatalogueElement, FlowDirection } from "./catalogue/CatalogueElement.js";
export type * from "./system/index.js";
