import type { Band, FuelCaution, LimitName, MediumSource, Part, Regime } from "@thirstline/core";

/** Whether the engine gets its fuel. */
export type Verdict = "holds" | "tight" | "starves" | "cannot say";

/** Why a verdict is what it is. */
export type Reason =
  /** the limit is broken at the demand, even at the good end of what is known */
  | { readonly code: "broken"; readonly limit: LimitName }
  /** nothing can pass: a shut part, or a vent that lets no air in */
  | { readonly code: "shut"; readonly by: string }
  | { readonly code: "over clean limit" }
  | { readonly code: "little in hand"; readonly limit: LimitName }
  /** the good end feeds the engine and the bad end starves it; a flow test of the named parts would settle it */
  | { readonly code: "unsettled"; readonly limit: LimitName; readonly parts: readonly string[] }
  | { readonly code: "no vacuum limit" }
  /** wax: temperature, cloud point, K; whether the figures say it starves even free of wax */
  | {
      readonly code: "below cloud point";
      readonly temperature: number;
      readonly cloudPoint: number;
      readonly starvesAnyway: boolean;
    }
  | { readonly code: "cloud point not known"; readonly temperature: number; readonly limit: number }
  /** no data back the fuel's figures at this temperature, K */
  | { readonly code: "fuel out of range"; readonly temperature: number; readonly from: number; readonly to: number };

/** What to know before relying on a figure; places are part names. */
export type Caution =
  | { readonly code: "fuel"; readonly caution: FuelCaution }
  | { readonly code: "transitional"; readonly part: string; readonly reynolds: number }
  | { readonly code: "estimated medium"; readonly part: string; readonly source: MediumSource; readonly factor: number }
  | { readonly code: "strainer laws"; readonly part: string }
  | { readonly code: "reversed"; readonly part: string }
  | { readonly code: "housing share unknown"; readonly part: string }
  | { readonly code: "constant K in laminar flow"; readonly part: string; readonly reynolds: number }
  | { readonly code: "orifice at low Reynolds number"; readonly part: string; readonly reynolds: number }
  | { readonly code: "limit assumed"; readonly which: "clean" | "at change" | "both"; readonly source: string }
  | { readonly code: "clean limit used at change" }
  | { readonly code: "altitude"; readonly altitude: number; readonly ambientPressure: number }
  | { readonly code: "vapour margin"; readonly margin: number; readonly part: string }
  | { readonly code: "low point in the path"; readonly pressure: number; readonly part: string }
  | { readonly code: "no bore at the pump" }
  | { readonly code: "return heat ignored" }
  | { readonly code: "freed air"; readonly share: number; readonly vacuum: number }
  | { readonly code: "tank runs backwards"; readonly tank: string; readonly flow: number }
  | { readonly code: "vent blocked"; readonly tank: string }
  | { readonly code: "delivery not judged" }
  | {
      readonly code: "past terminal drop";
      readonly part: string;
      readonly drop: number;
      readonly terminalDrop: number;
    };

/** A part of the path and what it costs at the demand. */
export interface PartRow {
  readonly name: string;
  readonly kind: Part["kind"] | "bank" | "tank" | "velocity";
  /** how deep inside banks it stands: 0 on the main path */
  readonly depth: number;
  /** m3/s */
  readonly flow: number;
  /** pressure it costs, Pa; negative where it helps; null where it holds back */
  readonly drop: number | null;
  /** of all that costs on its side of the pump, 0 to 1; 0 for what helps */
  readonly share: number;
  /** Pa absolute behind it, static */
  readonly pressure: number | null;
  readonly reynolds: number | null;
  readonly regime: Regime | null;
}

/** A ceiling with what binds it. */
export interface CeilingFigure {
  /** largest demand, m3/s, at both ends of what is known; Infinity where demand does not touch the limit */
  readonly flow: Band;
  /** what binds with middle figures */
  readonly limit: LimitName;
}

/** The answer at one fuel temperature. */
export interface CheckPoint {
  /** K */
  readonly temperature: number;
  readonly verdict: Verdict;
  readonly reasons: readonly Reason[];
  readonly cautions: readonly Caution[];
  /** kg/m3, m2/s, Pa, K */
  readonly fuel: {
    readonly name: string;
    readonly density: number;
    readonly kinematicViscosity: number;
    readonly vapourPressure: number;
    readonly cloudPoint: number | null;
    readonly coldFilterPluggingPoint: number | null;
  };
  /** m3/s */
  readonly demand: { readonly burn: number; readonly return: number; readonly total: number };
  /** of the air at the place, Pa absolute: what gauge pressures and vacuums are counted from */
  readonly ambientPressure: number;
  /** m3/s the suction line carries */
  readonly suctionFlow: number;
  /** at the pump's inlet, Pa, with clean elements; with no pump, at the engine */
  readonly vacuum: Band;
  /** the same with the elements as they are, Pa; null when no soil is stated */
  readonly vacuumNow: Band | null;
  /** Pa; null when none */
  readonly vacuumLimits: { readonly clean: number | null; readonly atChange: number | null };
  /** gauge, at the injection pump, Pa, with the elements as they are; null when it cannot be known */
  readonly feedPressure: Band | null;
  /** gauge, Pa */
  readonly feedLimit: number;
  /** lowest static pressure on the suction side, elements as they are, Pa absolute, and behind which part; null when nothing passes */
  readonly lowest: { readonly pressure: Band; readonly part: string } | null;
  /** pressure of the fuel's motion at the pump's inlet, counted in the vacuum, Pa */
  readonly velocityHead: number;
  readonly ceilings: { readonly clean: CeilingFigure; readonly atChange: CeilingFigure };
  /** the limit that in hand is counted to */
  readonly binds: LimitName;
  /**
   * ceiling over demand, minus one, of the elements as they are; on the suction side of a pump whose relief goes to the
   * tank, the largest pump flow over the pump's own, minus one
   */
  readonly inHand: Band;
  /** vacuum still free for soil before the limit at change, Pa; null with no limit */
  readonly riseFree: Band | null;
  /** which part costs most on the suction side, with the elements as they are */
  readonly most: { readonly name: string; readonly share: number } | null;
  /** in the order the fuel meets them, with clean elements */
  readonly suction: readonly PartRow[];
  readonly delivery: readonly PartRow[];
  /** the same with the elements as they are; null when no soil is stated on the whole path */
  readonly asTheyAre: { readonly suction: readonly PartRow[]; readonly delivery: readonly PartRow[] } | null;
}

/** Does it hold? At every temperature asked for. */
export interface CheckAnswer {
  readonly question: "check";
  readonly system: string;
  /** whether there is a pump, or gravity does it */
  readonly pump: "none" | "fixed" | "curve" | "pulse";
  /** who states the limits, in the file's words; null when it does not say */
  readonly limitSource: string | null;
  /** the worst of the points: starves, then cannot say, then tight, then holds */
  readonly verdict: Verdict;
  readonly points: readonly CheckPoint[];
}
