import type { Band } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import type { CheckPoint, Verdict } from "../check/CheckAnswer.js";
import type { ChangeRule, LifeReason } from "../life/LifeAnswer.js";
import type { UnitSystem } from "../say/units.js";
import type { CardElement, CardPriming, CardVolumes } from "./CardElement.js";
import type { CardSection } from "./CardSection.js";

export type { CardElement, CardPriming, CardVolumes } from "./CardElement.js";
export type { CardItem, CardSection, CardSectionName } from "./CardSection.js";

/** What the gauge should read after the change. */
export interface CardReading {
  /** share of the full demand, 0 to 1 */
  readonly load: number;
  /** m3/s */
  readonly demand: number;
  /** at the pump's inlet, Pa; with no pump, at the engine */
  readonly vacuum: Band;
  /** gauge, at the injection pump, Pa; null when it cannot be known */
  readonly feed: Band | null;
}

/** One side of a bank shut, so that the other can be changed. */
export interface CardDuplex {
  /** the side to change first, and what carries the flow meanwhile */
  readonly first: string;
  readonly through: readonly string[];
  /** whether what carries it has to be opened first, being shut off now */
  readonly opened: boolean;
  /** at full demand, Pa; null where nothing can pass */
  readonly vacuum: Band | null;
  readonly verdict: Verdict;
}

/** How often bowls are drained, or why nobody can say. */
export type CardWater =
  | { readonly code: "no water stated" }
  | { readonly code: "life not known"; readonly reasons: readonly LifeReason[] }
  /** nothing in the system keeps water */
  | { readonly code: "no separator"; readonly temperature: number; readonly free: number }
  | { readonly code: "nothing free"; readonly temperature: number }
  | {
      readonly code: "stages";
      readonly season: string;
      /** K */
      readonly temperature: number;
      readonly stages: readonly {
        readonly element: string;
        readonly kind: "bowl" | "absorber";
        /** running time until the bowl is full, or the absorber shut, s; null where it cannot be told */
        readonly every: number | null;
        readonly why: "bowl not stated" | "none comes" | null;
      }[];
    };

/** How long a tank is to stand before its water is drained. */
export type CardSettling =
  | { readonly code: "time"; readonly size: number; readonly depth: number; readonly time: number }
  | { readonly code: "may be ice" }
  | { readonly code: "not known" };

/** When the next change is due. */
export interface CardNext {
  /** running time and rule; null where nothing says */
  readonly change: ChangeRule | null;
  /** distance, m, and calendar time, s, whichever comes first; null where not stated */
  readonly distance: number | null;
  readonly calendar: number | null;
  readonly source: string | null;
}

/** What a card is made of, in SI. */
export interface CardFacts {
  readonly question: "card";
  readonly system: string;
  readonly pump: System["pump"]["kind"];
  /** what burns: decides which cautions come first */
  readonly fuel: "diesel" | "petrol";
  /** of the fuel on the day, K */
  readonly temperature: number;
  /** "cannot say" where the system has nothing to change */
  readonly verdict: "card" | "cannot say";
  /** in the order the fuel meets them */
  readonly elements: readonly CardElement[];
  /** filters left as they are */
  readonly left: readonly string[];
  /** a cock between tank and elements, by name; null where the file has none */
  readonly cock: string | null;
  /** pressure the delivery side may hold, Pa; null where nothing says */
  readonly relief: number | null;
  readonly duplex: CardDuplex | null;
  readonly volumes: CardVolumes;
  readonly priming: CardPriming;
  /** places to bleed, from the tank on */
  readonly bleed: readonly string[];
  readonly water: CardWater;
  readonly settling: CardSettling;
  /** lowest load of the duty first, where there is one; none where nothing can pass */
  readonly readings: readonly CardReading[];
  /** the check at full demand behind the last reading: its verdict, limits and reasons */
  readonly check: Pick<CheckPoint, "verdict" | "reasons" | "vacuumLimits" | "feedLimit"> & {
    /** whether a limit is taken from published guidance, since the file has none */
    readonly limitAssumed: boolean;
  };
  readonly next: CardNext;
}

/** What do I do at the bench? The facts, and the same in words. */
export interface CardAnswer extends CardFacts {
  readonly units: UnitSystem;
  /** cautions first, always */
  readonly sections: readonly CardSection[];
}
