import type { z } from "zod";
import type { filterBlock } from "./filter.js";
import type { fittingBlock } from "./fitting.js";
import type { lineBlock } from "./line.js";
import type { orificeBlock } from "./orifice.js";
import type { riseBlock } from "./rise.js";
import type { strainerBlock } from "./strainer.js";
import type { valveBlock } from "./valve.js";

/** One part, as a file has it: a block with one key, which names the kind. */
export interface PartData {
  line?: z.output<typeof lineBlock> | undefined;
  fitting?: z.output<typeof fittingBlock> | undefined;
  filter?: z.output<typeof filterBlock> | undefined;
  rise?: z.output<typeof riseBlock> | undefined;
  bank?: PartData[][] | undefined;
  valve?: z.output<typeof valveBlock> | undefined;
  orifice?: z.output<typeof orificeBlock> | undefined;
  strainer?: z.output<typeof strainerBlock> | undefined;
}
