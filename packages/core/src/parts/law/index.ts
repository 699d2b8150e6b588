export { addPart, type Setting } from "./addPart.js";
export type { OwnLaw } from "./OwnLaw.js";
export { Terms } from "./Terms.js";
