export { addPart, type Setting } from "./addPart.js";
export type { OwnLaw, Pace } from "./OwnLaw.js";
export { Terms } from "./Terms.js";
