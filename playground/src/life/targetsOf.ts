import type { System } from "@thirstline/spec/system";
import { life } from "@thirstline/study";
import { partsIn } from "../model/parts.js";
import type { SoilTargets } from "./SoilTargets.js";
import { withSoil } from "./soiledBy.js";

/** Beyond this an element is as good as shut, and a share of the way there says nothing. */
const MOST = 200;
/** Where nobody can say how filters fill, they are tried alike up to so many times their clean resistance. */
const ALIKE = 10;

/**
 * How far each filter has closed, by what its soil does over its life, when the first limit is met. Where life cannot say,
 * or has ended before it began, all are closed alike; null where there is no filter.
 */
export function targetsOf(system: System): SoilTargets | null {
  const { elements, end } = life(withSoil(system, () => undefined));
  const due = elements.map(({ name, restriction }) => [name, Math.min(MOST, restriction)] as const);
  if (end?.time !== 0 && due.some(([, restriction]) => restriction > 1.005)) return { by: "life", due };
  const names = partsIn(system).flatMap((part) => (part.part === "filter" ? [part.name] : []));
  return names.length === 0 ? null : { by: "alike", due: names.map((name) => [name, ALIKE]) };
}
