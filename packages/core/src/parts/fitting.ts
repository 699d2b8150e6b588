import { InputError } from "../InputError.js";
import { requireAtLeast, requireBetween, requireMoreThan } from "../require.js";
import { MOST_ROUGH } from "./friction/index.js";
import { type Named, nameOf } from "./Named.js";

/** How a fitting's loss is stated. */
export type FittingLoss =
  | { readonly by: "k"; readonly k: number }
  | { readonly by: "two-K"; readonly k1: number; readonly kInfinity: number }
  | { readonly by: "equivalent length"; readonly bores: number; readonly roughness: number };

/** An elbow, tee, cock or change of bore. */
export interface Fitting extends Named {
  readonly kind: "fitting";
  /** bore the loss refers to, m */
  readonly bore: number;
  /** how many alike, one after another */
  readonly count: number;
  readonly loss: FittingLoss;
}

/** What `fitting` takes: bore, m; how many; and exactly one statement of the loss. */
export interface FittingGiven extends Named {
  readonly bore: number;
  readonly count?: number;
  /** loss in velocity heads, the same at any flow */
  readonly k?: number;
  /** Hooper's pair: K = k1/Re + kInfinity (1 + 0.0254 m/bore) */
  readonly twoK?: { readonly k1: number; readonly kInfinity: number };
  /** length of line of the same bore that costs as much, in bores; needs `roughness` */
  readonly equivalentLength?: number;
  /** wall roughness of that line, m */
  readonly roughness?: number;
}

/**
 * A fitting, by one of three statements of its loss. A constant K is fair in turbulent flow only: fuel lines run at a
 * Reynolds number of some hundred, where the two-K form tells that an elbow costs several times its K.
 *
 * @param given see `FittingGiven`
 * @throws InputError naming the field, also when none or several losses are stated
 * @see twoKConstants; Hooper, Chem. Eng. 88 (1981) 96
 * @example
 * fitting({ bore: 0.01, count: 2, twoK: twoKConstants["elbow 90 screwed"] })
 */
export function fitting(given: FittingGiven): Fitting {
  const count = given.count ?? 1;
  requireMoreThan("fitting", "bore", given.bore, 0, "m");
  requireAtLeast("fitting", "count", count, 1);
  return { kind: "fitting", ...nameOf(given), bore: given.bore, count, loss: lossOf(given) };
}

function lossOf(given: FittingGiven): FittingLoss {
  const { k, twoK, equivalentLength } = given;
  const stated = [k, twoK, equivalentLength].filter((loss) => loss !== undefined).length;
  if (stated !== 1) throw new InputError("fitting", "loss", "stated once: k, twoK or equivalentLength", stated);
  if (k !== undefined) {
    requireAtLeast("fitting", "k", k, 0);
    return { by: "k", k };
  }
  if (twoK !== undefined) {
    requireAtLeast("fitting", "twoK.k1", twoK.k1, 0);
    requireAtLeast("fitting", "twoK.kInfinity", twoK.kInfinity, 0);
    return { by: "two-K", k1: twoK.k1, kInfinity: twoK.kInfinity };
  }
  const bores = equivalentLength ?? 0;
  const roughness = given.roughness ?? 0;
  requireMoreThan("fitting", "equivalentLength", bores, 0, "bores");
  requireBetween("fitting", "roughness", roughness, { from: 0, to: MOST_ROUGH * given.bore }, "m");
  return { by: "equivalent length", bores, roughness };
}
