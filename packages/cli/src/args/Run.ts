import type { Exit } from "../exit.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import type { Request } from "./Request.js";

/** Runs a command that has been understood. */
export type Run = (request: Request, io: Io, out: Output, err: Output) => Promise<Exit>;
