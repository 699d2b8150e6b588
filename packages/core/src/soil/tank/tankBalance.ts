import { requireAtLeast, requireMoreThan } from "../../require.js";
import { massOf } from "../distribution/massOf.js";
import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import { binCount } from "../distribution/sizeEdges.js";
import { decayed, filled } from "./decay.js";
import type { TankBalance, TankBalanceGiven } from "./TankBalanceKinds.js";

/**
 * The soil in a tank whose fuel is burnt, replaced, and partly sent round through the filters. What returns comes back
 * cleaner and thins the tank: in the long run a suction element catches about what the burnt fuel brought in, not what
 * all the flow through it would bring at the delivered concentration.
 *
 * In each size bin V dc/dt = burn c_in - (burn + path return + suction relief) c, path and suction being what the whole
 * path and the suction side catch there. The solution is closed; for flows that change, step from one to the next with
 * `tankAt` as the new start. Well mixed: nothing settles in the tank, which is the safe side for the filters.
 *
 * @param given see `TankBalanceGiven`
 * @throws InputError for a volume not above 0 or a flow below 0
 * @see mass balance of a stirred tank, e.g. O. Levenspiel, Chemical Reaction Engineering (from memory)
 * @example
 * tankBalance({ volume: 2.4, burn: 3.1e-5, returned: 6.3e-5, delivered, start: delivered, suction, delivery }).steady
 */
export function tankBalance(given: TankBalanceGiven): TankBalance {
  const { volume, burn, returned = 0, relief = 0, delivered, start, suction, delivery } = given;
  requireMoreThan("tankBalance", "volume", volume, 0, "m3");
  requireAtLeast("tankBalance", "burn", burn, 0, "m3/s");
  requireAtLeast("tankBalance", "returned", returned, 0, "m3/s");
  requireAtLeast("tankBalance", "relief", relief, 0, "m3/s");
  const path = suction.map((share, bin) => share + (1 - share) * (delivery[bin] ?? 0));
  /** m3/s of fuel freed of the bin's particles */
  const cleared = path.map((share, bin) => burn + share * returned + (suction[bin] ?? 0) * relief);

  const steadyShare = cleared.map((flow) => (flow > 0 ? burn / flow : 0));
  const keptShare = cleared.map((flow) => (flow > 0 ? 0 : 1));
  return {
    steady: weighed(delivered, steadyShare, start, keptShare),
    tankAt(time) {
      requireAtLeast("tankAt", "time", time, 0, "s");
      const old = cleared.map((flow) => Math.exp((-flow * time) / volume));
      const fresh = cleared.map((flow) => ((burn * time) / volume) * decayed((flow * time) / volume));
      return weighed(delivered, fresh, start, old);
    },
    movedBy(time) {
      requireAtLeast("movedBy", "time", time, 0, "s");
      // The tank's concentration summed over time, kg s/m3, by bin.
      const summed = weighed(
        delivered,
        cleared.map((flow) => ((burn * time * time) / volume) * filled((flow * time) / volume)),
        start,
        cleared.map((flow) => time * decayed((flow * time) / volume)),
      ).masses;
      let [caughtBySuction, caughtByDelivery, burnt] = [0, 0, 0];
      for (let bin = 0; bin < binCount; bin++) {
        const [soil, before, after] = [summed[bin] ?? 0, suction[bin] ?? 0, path[bin] ?? 0];
        caughtBySuction += before * (burn + returned + relief) * soil;
        caughtByDelivery += (after - before) * (burn + returned) * soil;
        burnt += (1 - after) * burn * soil;
      }
      return { delivered: burn * time * massOf(delivered), caughtBySuction, caughtByDelivery, burnt };
    },
  };
}

/** Two distributions added, each bin weighed. */
function weighed(
  one: ParticleDistribution,
  oneShare: Float64Array,
  other: ParticleDistribution,
  otherShare: Float64Array,
): ParticleDistribution {
  const sum = (first: Float64Array, second: Float64Array) =>
    first.map((value, bin) => value * (oneShare[bin] ?? 0) + (second[bin] ?? 0) * (otherShare[bin] ?? 0));
  return { counts: sum(one.counts, other.counts), masses: sum(one.masses, other.masses) };
}
