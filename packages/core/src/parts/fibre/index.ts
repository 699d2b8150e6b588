export { type FibreLawName, fibreLaws } from "./fibreLaws.js";
