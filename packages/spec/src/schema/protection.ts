import { block } from "./block.js";
import { cleanlinessCode } from "./cleanliness.js";

/** How clean the injection pump wants its fuel, as a file has it. */
export const protectionBlock = block("a protection", "{ code: 15/13/10 }", { code: cleanlinessCode() });
