export type { Circuit, Parallel, Series } from "./Circuit.js";
export type { BankStop, PartStop, Stop } from "./compile.js";
export { netRise } from "./netRise.js";
export { parallel } from "./parallel.js";
export type { BankProfile, PartProfile, ProfileEntry } from "./profile.js";
export { series } from "./series.js";
export { type Solved, type SolveOptions, solve } from "./solve.js";
export { sweep } from "./sweep.js";
