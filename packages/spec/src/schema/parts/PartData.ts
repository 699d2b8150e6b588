import type { z } from "zod";
import type { PartKind, partKinds } from "./partKinds.js";

type Blocks = { [Kind in PartKind]?: z.output<(typeof partKinds)[Kind]["block"]> | undefined };

/** One part, as a file has it: a block with one key, which names the kind. */
export interface PartData extends Blocks {
  bank?: PartData[][] | undefined;
}
