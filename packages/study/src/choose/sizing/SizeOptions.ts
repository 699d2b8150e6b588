import type { AskedRating } from "../betaAt.js";
import type { Side } from "./stack.js";

/** What to search, besides what the file says. */
export interface SizeOptions {
  /** side of the pump; when left out, the suction side if it has filters or there is no other */
  readonly side?: Side;
  /** most elements side by side, 1 to 8; 4 when left out */
  readonly parallel?: number;
  /** most stages one after another, 1 to 3; 2 when left out */
  readonly stages?: number;
  /** bores for the lines on that side, m; the file's own when left out */
  readonly bores?: readonly number[];
  /** fuel temperatures, K: all between the coldest and the warmest are kept to; the seasons' and the file's own when left out */
  readonly temperatures?: readonly number[];
  /** wanted running time between changes, s; the manual's when left out, and never longer than it allows */
  readonly interval?: number;
  /** ISO 4406 code asked for; the file's when left out */
  readonly code?: string;
  /** a fineness some element must be tested to */
  readonly rating?: AskedRating;
  /** of one hour of work, in the catalogue's own currency */
  readonly labourRate?: number;
  /** how many of each ranking to keep; 20 when left out */
  readonly keep?: number;
}
