import type { Fault } from "@thirstline/spec";
import type { Query } from "../args/Query.js";
import type { Request } from "../args/Request.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import type { Subject } from "./Subject.js";

/** A question that has been asked, so that its figures can tell how they were reached. */
export interface Opened {
  readonly query: Query;
  /** the file or folder it was asked of, as named */
  readonly file: string;
  /** the name of the machine; of a folder, its own */
  readonly title: string;
  /** @throws InputError when core refuses something asked */
  readonly subjects: () => readonly Subject[];
  /** what is wrong with some files of a folder, where the rest has figures all the same */
  readonly faults?: readonly Fault[];
}

/** Asks a question; tells all faults. Null when there are no figures. */
export type Open = (request: Request, io: Io, out: Output, err: Output) => Promise<Opened | null>;
