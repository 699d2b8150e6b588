/** One thing wrong with a file: where, what, and what would be right. */
export interface Fault {
  /** as the caller named it */
  readonly file: string;
  /** from 1; 1 where the fault concerns the whole file */
  readonly line: number;
  /** from 1 */
  readonly column: number;
  /** such as "suction[0].line.bore"; "" for the whole file */
  readonly path: string;
  /** for programs: a few words that do not change with the values, such as "no unit" */
  readonly code: string;
  /** the value found, when it is a single one */
  readonly received: string | number | boolean | null;
  /** what is wrong and what would be right, without a full stop */
  readonly message: string;
}

/** Something a file leaves open, and what is taken for it. */
export interface Caution {
  /** for programs */
  readonly code: string;
  /** such as "demand.return" */
  readonly path: string;
  /** for people, without a full stop */
  readonly message: string;
}
