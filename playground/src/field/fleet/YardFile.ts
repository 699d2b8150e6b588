/** One file of a yard as it was opened. */
export interface YardFile {
  /** from the yard's folder, which holds the lists: "log.csv", "../heron.yaml" */
  readonly path: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** The files that are lists, in the yard's own folder. */
export const LOG = "log.csv";
export const MACHINES = "machines.csv";
export const SHELF = "shelf.csv";
