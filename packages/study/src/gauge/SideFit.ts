import { type Averaged, averaged, intervalOf } from "./averaged.js";
import { type Explained, findTerms } from "./findTerms.js";
import { type Fitted, fitAll, type Weighed } from "./fitAll.js";
import type { Interval } from "./GaugeAnswer.js";
import { hasTrend } from "./hasTrend.js";
import type { Run } from "./Instant.js";
import type { GaugeSide } from "./instantsOf.js";
import { lawWeights, type Weighted } from "./lawWeights.js";
import { flat } from "./shapes.js";
import { weigh } from "./weigh.js";

/** One gauge's readings, fitted. */
export interface SideFit {
  readonly weighed: Weighed;
  /** what the readings show besides soil */
  readonly explained: Explained;
  /** with all readings and nothing besides soil; and with those that stand off set aside, null where none does */
  readonly soil: SoilFit;
  readonly soilWithout: SoilFit | null;
}

/** Soil's part of the readings. */
export interface SoilFit {
  /** the readings it is fitted to */
  readonly weighed: Weighed;
  readonly laws: readonly Weighted[];
  readonly trend: boolean;
  readonly best: Fitted;
  readonly draws: readonly Averaged[];
  /** resistance over clean of the lead at the last reading */
  readonly ratio: Interval;
}

/** Fits one gauge's readings; null where there are none. */
export function sideFit(side: GaugeSide, run: Run, zeroSpread: number, weight: number, seed: number): SideFit | null {
  if (run.instants.length === 0) return null;
  const weighed = weigh(run, zeroSpread, weight);
  const explained = findTerms(weighed, side);
  const soil = soilFit(weighed, explained.soil, seed);
  if (!soil) return null;
  const off = new Set(explained.terms.flatMap((term) => (term.kind === "outlier" ? [term.at] : [])));
  if (off.size === 0) return { weighed, explained, soil, soilWithout: null };
  // Set aside whole, so that they have no say in the scatter either.
  const rest = weigh({ ...run, instants: run.instants.filter((_, at) => !off.has(at)) }, zeroSpread, weight);
  return { weighed, explained, soil, soilWithout: soilFit(rest, fitAll(rest), seed) };
}

function soilFit(weighed: Weighed, fits: readonly Fitted[], seed: number): SoilFit | null {
  const trend = hasTrend(weighed, fits);
  const counted = trend ? fits.filter(({ model }) => model.shape !== flat) : fits;
  const laws = lawWeights(counted);
  const [first] = laws;
  if (!first) return null;
  const draws = averaged(weighed, laws, seed);
  const now = weighed.run.instants.at(-1)?.time ?? 0;
  return {
    weighed,
    laws,
    trend,
    best: first.fitted,
    draws,
    ratio: intervalOf(draws, ({ state }) => state.ratioAt(now)),
  };
}
