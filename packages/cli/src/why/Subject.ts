import type { FigureListed, Working } from "@thirstline/study/working";

/** What a figure is of: the machine of a file, one of the systems that a question compares, a machine of a yard. */
export interface Subject {
  /** what stands before its figures' names, such as "changed"; empty where there is no other */
  readonly label: string;
  /** what it is, in words; null where the label says it */
  readonly about: string | null;
  /** what headings call it */
  readonly name: string;
  /** names of the figures that its question has of it, beside those that any system has */
  readonly own: readonly string[];
  /** whether it has those that any system has as well, of `check`, `curve` and `life` */
  readonly general: boolean;
  /** what a list of every subject shows of it */
  readonly brief: () => readonly FigureListed[];
  /** every figure of it */
  readonly list: () => readonly FigureListed[];
  readonly has: (figure: string) => boolean;
  /** how a figure was reached, once for each temperature it is asked at; null where it has no value */
  readonly workings: (figure: string) => readonly (Working | null)[];
}
