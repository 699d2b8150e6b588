export { addPart, type Setting } from "./addPart.js";
export type { BankLaw, OwnLaw, Pace, PartLaw } from "./OwnLaw.js";
export { type MediumTerm, Terms } from "./Terms.js";
