export { addPart, type Setting } from "./addPart.js";
export type { BankLaw, OwnLaw, Pace } from "./OwnLaw.js";
export { type MediumTerm, Terms } from "./Terms.js";
