import { block } from "./block.js";
import { measured } from "./leaves/index.js";

/** Where the machine stands, as a file has it. */
export const placeBlock = block("a place", "{ altitude: 350 m }", { altitude: measured("altitude") });
