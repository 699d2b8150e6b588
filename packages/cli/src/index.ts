export { type Exit, exit } from "./exit.js";
export type { Io } from "./io/Io.js";
export { main } from "./main.js";
