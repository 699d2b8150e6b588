import type { Asked } from "../Asked.js";

/** A figure of an answer in JSON: which of the workings it is, and what that is asked with. */
export interface Leaf {
  readonly figure: string;
  readonly asked: Asked;
  /** which of the systems compared, where a question compares some */
  readonly of?: string;
}

/** Blocks of an answer from its whole down to the one that holds a figure. */
export type Blocks = readonly Readonly<Record<string, unknown>>[];

/**
 * A pattern of paths, `*` for any place in a list or any name, with the figure it means: its name, or a name made of the
 * block that holds it.
 */
export type LeafRow = readonly [pattern: string, figure: string | LeafName];

/** A figure's name by the block that holds it and, for names that need it, the named block around that one. */
export type LeafName = (block: Readonly<Record<string, unknown>>, around: Readonly<Record<string, unknown>>) => string;
