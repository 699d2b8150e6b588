export * from "./circuit/index.js";
export * from "./fuel/index.js";
export { InputError } from "./InputError.js";
export * from "./parts/index.js";
export * from "./soil/index.js";
export * from "./supply/index.js";
