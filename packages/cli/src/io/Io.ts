import type { Readable, Writable } from "node:stream";

/** Where the command line reads and writes; the process's own, or a test's. */
export interface Io {
  readonly stdin: Readable;
  readonly stdout: Writable;
  readonly stderr: Writable;
  /** folder that file names start from */
  readonly cwd: string;
  /** width of the terminal in characters, where known */
  readonly columns: number | undefined;
  /** whether standard output is a terminal */
  readonly isTerminal: boolean;
  /** whether what is written to standard error is seen at once by someone; left out means no */
  readonly errorIsTerminal?: boolean;
  /** variables such as NO_COLOR */
  readonly environment: Readonly<Record<string, string | undefined>>;
}
