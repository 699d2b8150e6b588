import type { CatalogueElement, System } from "@thirstline/spec/system";
import { cleanlinessOf } from "../../life/cleanlinessOf.js";
import { factsOf } from "../../life/factsOf.js";
import { arrangedSystem } from "./arrangedSystem.js";
import { arrangementFigures } from "./arrangementFigures.js";
import type { Picked } from "./SearchKinds.js";
import type { NearestMiss, SizeFailure } from "./SizeAnswer.js";
import type { Side } from "./stack.js";
import type { Failed } from "./Tally.js";

/** The later a thing is asked for in a search, the more is right with what fails by it. */
const LAST_FIRST: readonly SizeFailure[] = [
  "interval",
  "cleanliness",
  "rating",
  "vacuum at change",
  "vacuum clean",
  "feed pressure",
  "vapour",
  "pump capacity",
  "most flow",
];

/** Of a search that found nothing: what came nearest, with its figures; null where nothing can be reckoned of any. */
export function nearestMiss(
  failed: ReadonlyMap<SizeFailure, Failed>,
  given: {
    readonly system: System;
    readonly elements: readonly CatalogueElement[];
    readonly side: Side;
    readonly temperatures: readonly number[];
  },
): NearestMiss | null {
  const by = LAST_FIRST.find((one) => failed.has(one));
  const nearest = by && failed.get(by)?.nearest;
  if (!by || !nearest) return null;
  const { bore } = nearest;
  const stages = namesOf(nearest, given.elements);
  const system = arrangedSystem(given.system, given.elements, given.side, { stages, bore });
  const facts = factsOf(system);
  const rows = "given" in facts ? cleanlinessOf(system, facts.given).cleanliness : [];
  const code = rows.at(-1)?.code ?? null;
  return { by, stages, bore, code, ...arrangementFigures(system, given.temperatures) };
}

function namesOf({ elements: picked, counts }: Picked, elements: readonly CatalogueElement[]): NearestMiss["stages"] {
  return picked.map((one, at) => ({ element: (elements[one] as CatalogueElement).name, count: counts[at] as number }));
}
