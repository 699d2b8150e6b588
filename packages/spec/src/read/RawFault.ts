import type { Node } from "yaml";

/** A path into a file's data. */
export type Path = readonly (string | number)[];

/** A fault before it has a file: its place is a node, an offset into the text, or found by its path. */
export interface RawFault {
  readonly code: string;
  readonly path: Path;
  readonly message: string;
  readonly received?: unknown;
  /** where it stands, when the path alone does not tell */
  readonly at?: Node | number;
  /** the key an unknown one was probably meant to be */
  readonly meant?: string;
}
