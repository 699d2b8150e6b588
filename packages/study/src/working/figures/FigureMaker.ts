import type { Step } from "../Step.js";

/** A figure that can be asked for, and how its working is made. */
export interface FigureMaker {
  /** in plain words, as it is asked for */
  readonly name: string;
  /** what it is listed under */
  readonly group: string;
  /** null where the system has no such figure, or nothing flows */
  readonly make: () => Step | null;
  /** whether making it takes many draws or a whole life, so that lists leave its value out */
  readonly slow?: boolean;
}
