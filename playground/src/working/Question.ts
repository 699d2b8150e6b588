import type { CatalogueElement, GaugeReading, System } from "@thirstline/spec/system";
import type {
  CardAnswer,
  CardOptions,
  FleetAnswer,
  GaugeAnswer,
  RemedyAnswer,
  RemedyOptions,
  SizeAnswer,
  SwapGiven,
  SwapOptions,
} from "@thirstline/study";
import type { SizeAsked } from "@thirstline/study/working";
import type { YardFile } from "../field/fleet/YardFile.js";

/** A question about a system, or a yard, as it was asked, with its answer where its figures go by that. */
export type Question =
  | { readonly kind: "swap"; readonly system: System; readonly given: SwapGiven; readonly options: SwapOptions }
  | {
      readonly kind: "size";
      readonly system: System;
      readonly elements: readonly CatalogueElement[];
      readonly answer: SizeAnswer;
      readonly options: SizeAsked;
    }
  | {
      readonly kind: "remedy";
      readonly system: System;
      readonly answer: RemedyAnswer;
      readonly options: RemedyOptions;
    }
  | { readonly kind: "card"; readonly system: System; readonly answer: CardAnswer; readonly options: CardOptions }
  | {
      readonly kind: "gauge";
      readonly system: System;
      readonly readings: readonly GaugeReading[];
      readonly answer: GaugeAnswer;
    }
  | { readonly kind: "fleet"; readonly files: readonly YardFile[]; readonly answer: FleetAnswer };

/** What figures are worked out from: a system by itself, or a question. */
export type Source = System | Question;

/** What figures are of, where that is not simply the system on the sheet. */
export interface Subject {
  /** null for the system on the sheet all the same */
  readonly source: Source | null;
  /** in a few words, for the panel; a function of what is compared where there are several */
  readonly about: string | ((of: string) => string);
}
