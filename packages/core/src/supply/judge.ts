import type { Circuit } from "../circuit/index.js";
import { isSoiled } from "../circuit/isSoiled.js";
import { isSpread } from "../circuit/isSpread.js";
import type { FuelState } from "../fuel/index.js";
import type { BandEnd } from "../parts/Band.js";
import { requireMoreThan } from "../require.js";
import { type Ceiling, ceilings } from "./ceilings.js";
import { cleaned } from "./cleaned.js";
import type { Limits } from "./Limits.js";
import { requireLimits } from "./requireLimits.js";
import type { Supply } from "./Supply.js";

/** What a supply does at a demand. */
export type Grade = "holds" | "tight" | "starves";

/** At one end of every band: the grade, and what binds. */
export interface EndJudgement {
  readonly grade: Grade;
  /** of clean elements, against the clean limit and all that is not a vacuum at change; the lowest */
  readonly clean: Ceiling | null;
  /** every ceiling of clean elements, in the order of the limits */
  readonly cleanCeilings: readonly Ceiling[];
  /** of the elements as they are, against the limit at change and the rest; the lowest */
  readonly atChange: Ceiling;
  /** every limit that is broken at the demand, the least ceiling first; with elements as they are */
  readonly broken: readonly Ceiling[];
  /** whether clean elements alone go over the clean limit: no room for soil */
  readonly overCleanLimit: boolean;
  /** every ceiling, lowest first, with elements as they are; the clean limit's with clean ones */
  readonly ceilings: readonly Ceiling[];
}

/** A judgement at both ends of what is known. */
export interface Judgement {
  /** `unsettled` when one end feeds the engine and the other starves it */
  readonly grade: Grade | "unsettled";
  /** with every band at its low end: least resistance, which nearly always is the kind end */
  readonly lowEnd: EndJudgement;
  readonly middle: EndJudgement;
  /** with every band at its high end */
  readonly highEnd: EndJudgement;
  /** whichever of the two ends has the worse grade; the high end where they agree */
  readonly worse: EndJudgement;
}

const WORSENING: readonly Grade[] = ["holds", "tight", "starves"];

/** Less than this in hand is tight; common practice, no source. */
export const LEAST_IN_HAND = 0.2;

/**
 * Whether a supply feeds the engine at a demand, at both ends of every band.
 *
 * *Starves*: the limit at change, the feed pressure, the vapour margin or the pump's capacity is broken. *Tight*: less
 * than 20 % in hand, or clean elements already over the clean limit. *Holds*: neither. Where the ends disagree but
 * neither starves, the worse counts. Whether the figures mean anything (cloud point, range of the fuel's data, a missing
 * limit) is for the caller to say.
 *
 * @param supply as it stands, soil included
 * @param fuel from `fuelState`
 * @param limits what to keep to
 * @param demand m3/s, return included
 * @throws InputError when the demand is not more than 0, or a limit is not a finite number
 * @example
 * judge(supply, fuel, { vacuumClean: 20e3, vacuumAtChange: 40e3, feedPressure: 25e3 }, 9.5e-5).grade
 */
export function judge(supply: Supply, fuel: FuelState, limits: Limits, demand: number): Judgement {
  requireMoreThan("judge", "demand", demand, 0, "m3/s");
  requireLimits("judge", limits);
  const middle = judgeEnd(supply, fuel, limits, demand, "middle");
  const certain = !circuitsOf(supply).some(isSpread);
  const lowEnd = certain ? middle : judgeEnd(supply, fuel, limits, demand, "low");
  const highEnd = certain ? middle : judgeEnd(supply, fuel, limits, demand, "high");
  // Nearly always the high end is the worse. But a filter behind a hump in one branch, or on the way of a tank that is
  // fed backward, may help by holding back: so the ends are compared, not taken for granted.
  const unsettled = (highEnd.grade === "starves") !== (lowEnd.grade === "starves");
  const worse = WORSENING.indexOf(lowEnd.grade) > WORSENING.indexOf(highEnd.grade) ? lowEnd : highEnd;
  return { grade: unsettled ? "unsettled" : worse.grade, lowEnd, middle, highEnd, worse };
}

function circuitsOf(supply: Supply): Circuit[] {
  return [supply.suction, supply.delivery, ...supply.tanks.map((tank) => tank.path)].filter((one) => one !== null);
}

function judgeEnd(supply: Supply, fuel: FuelState, limits: Limits, demand: number, end: BandEnd): EndJudgement {
  const cleanFound = ceilings(cleaned(supply), fuel, limits, demand, end);
  const asItIs = circuitsOf(supply).some(isSoiled) ? ceilings(supply, fuel, limits, demand, end) : cleanFound;
  const found = asItIs.map((one) =>
    one.limit === "vacuum clean" ? (cleanFound.find(({ limit }) => limit === one.limit) ?? one) : one,
  );
  const lowestFirst = (a: Ceiling, b: Ceiling) => a.inHand - b.inHand;
  const atChange = found.filter(({ limit }) => limit !== "vacuum clean").sort(lowestFirst);
  const clean = cleanFound.filter(({ limit }) => limit !== "vacuum at change").sort(lowestFirst);
  const least = atChange[0] as Ceiling;
  const overCleanLimit = found.some(({ limit, inHand }) => limit === "vacuum clean" && inHand < 0);
  const broken = atChange.filter(({ inHand }) => inHand < 0);
  const tight = overCleanLimit || least.inHand < LEAST_IN_HAND;
  return {
    grade: broken.length > 0 ? "starves" : tight ? "tight" : "holds",
    clean: clean[0] ?? null,
    cleanCeilings: cleanFound,
    atChange: least,
    broken,
    overCleanLimit,
    ceilings: found.sort(lowestFirst),
  };
}
