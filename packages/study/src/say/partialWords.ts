import type { FlowShare, LifeAnswer, PartialChange } from "../life/LifeAnswer.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** Less than this bought is nothing, s. */
const LITTLE = 60;

/** What changing one element alone buys, and what it does to its neighbours; of elements that are alike it is said once. */
export function partialWords({ partial }: LifeAnswer, units: UnitSystem): Words[] {
  const firsts = partial.filter((one, at) => !partial.slice(0, at).some((before) => isAlike(before, one)));
  return firsts.map((one) => {
    const alike = partial.filter((other) => other !== one && isAlike(one, other)).map(({ element }) => element);
    return sentence(one, alike, units);
  });
}

function isAlike(a: PartialChange, b: PartialChange): boolean {
  const [own, other] = [ownShare(a), ownShare(b)];
  const near = (x: number, y: number) => Math.abs(x - y) <= 1e-6 * Math.abs(y);
  const times = a.time === null || b.time === null ? a.time === b.time : near(a.time, b.time);
  return times && own !== undefined && other !== undefined && near(own.after, other.after);
}

function ownShare({ element, shares }: PartialChange) {
  return shares.find((share) => share.element === element);
}

function sentence(one: PartialChange, alike: readonly string[], units: UnitSystem): Words {
  const { element, shares } = one;
  const own = ownShare(one);
  const others = shares.filter((share) => share.element !== element);
  const name = alike.length === 0 ? element : `${element} (or ${alike.join(" or ")})`;
  if (!own || others.length === 0 || own.after - own.before < 0.005) return say`${name} alone ${bought(one, units)}.`;
  const percent = (key: string, share: number) => fig(key, quantity(share, "ratio", "metric"));
  const after = ({ element: of, after: share }: FlowShare) =>
    percent(`share of flow of ${of} with ${element} new`, share);
  const before = percent(`share of flow of ${element} before ${element} is changed`, own.before);
  const left = others.map((other) => say`${after(other)} to ${other.element}`);
  return say`${name} alone ${bought(one, units)}: new, it takes ${after(own)} of the flow where it took ${before}, fills the faster for it, and leaves ${left.flatMap((words, at) => (at === 0 ? words : [" and ", ...words]))}.`;
}

function bought({ element, time }: PartialChange, units: UnitSystem): Words {
  if (time === null) return say`buys more than ten years of duty`;
  if (time < LITTLE) return say`buys nothing, since the limit is met elsewhere`;
  return say`buys another ${fig(`next end with ${element} alone new`, quantity(time, "running time", units))}`;
}
