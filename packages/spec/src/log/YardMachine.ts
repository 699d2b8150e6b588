/** What is at stake when a machine stops. */
export type Stakes = "stops the work" | "a nuisance";

/** A machine of a yard's list. */
export interface YardMachine {
  /** no two machines of a list share it */
  readonly machine: string;
  /** its system file, named from the folder of the list */
  readonly system: string;
  /** null when not stated */
  readonly stakes: Stakes | null;
  /** when all its elements were last changed, before its log begins: the day, and what the meters, s and m, showed */
  readonly changed?: { readonly date?: string; readonly hours?: number; readonly distance?: number };
}

/** A part on a yard's shelf, and one place in a system that it is for. */
export interface ShelfPart {
  readonly part: string;
  /** the element it replaces, by its name in the system file */
  readonly element: string;
  /** the system file, named from the folder of the list; null for any that has such an element */
  readonly system: string | null;
  /** how many are on the shelf; null when this row does not say */
  readonly onHand: number | null;
  /** how long a new one takes to come, s; null when this row does not say */
  readonly delivery: number | null;
}
