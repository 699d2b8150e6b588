export { type Built, type BuiltTank, build } from "./build/build.js";
export type * from "./system/index.js";
