import { type BandEnd, life as followLife, type LifeMoment } from "@thirstline/core";
import { factsOf } from "../../life/factsOf.js";
import { filtersOf } from "../../life/filtersOf.js";
import { assumedMakeOf, oneBetaOf } from "../../life/Guess.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import * as formulas from "../formulas/duty.js";
import type { Step } from "../Step.js";
import { worked } from "../worked.js";
import { endOfLife } from "./endStep.js";
import type { LifeScene } from "./lifeFacts.js";

const GROUP = "How long the elements last";

/** Where what is only estimated puts the end of a life; none where nothing is estimated. */
export function rangeFigures(life: LifeScene): FigureMaker[] {
  const ways = waysOf(life);
  if (ways.length < 2) return [];
  const ends = () => life.scene.kept("ends of a range", () => ways.map((way) => endBy(life, way)));
  const early = () => {
    const t = ends().flatMap((one) => one ?? []);
    return t.length === 0 ? null : worked(formulas.earliestOf, { t }, { name: "early end" });
  };
  const late = () => {
    const t = ends();
    return t.every((one) => one !== null) ? worked(formulas.lastOf, { t }, { name: "late end" }) : null;
  };
  return [
    { group: GROUP, name: "early end", make: early },
    { group: GROUP, name: "late end", make: late },
  ];
}

interface Way {
  readonly capacity: number;
  readonly capture: number;
  readonly end: BandEnd;
}

/** Every way the estimates may stand, as the answer follows them. */
function waysOf({ facts }: LifeScene): Way[] {
  const filters = filtersOf(facts.system).filter(({ blocked }) => !blocked);
  const capacities = filters.some((filter) => assumedMakeOf(filter) !== null) ? [0, 1] : [0.5];
  const captures = filters.some((filter) => oneBetaOf(filter) !== null) ? [0, 0.5, 1] : [0.5];
  const estimated = filters.some(({ medium: { by } }) => by === "rating" || by === "fibre");
  const ends: readonly BandEnd[] = estimated ? ["low", "high"] : ["middle"];
  return ends.flatMap((end) =>
    capacities.flatMap((capacity) => captures.map((capture) => ({ capacity, capture, end }))),
  );
}

function endBy({ scene, facts }: LifeScene, { capacity, capture, end }: Way): Step | null {
  const own = factsOf(facts.system, { capacity: () => capacity, capture: () => capture }, end);
  if ("reasons" in own) return null;
  const found = followLife(own.given);
  const last = found.end ?? (found.moments.at(-1) as LifeMoment);
  const stands = (at: number) => (at === 0 ? "least" : at === 1 ? "most" : "likely");
  const name = `end with capacities ${stands(capacity)}, catch ${stands(capture)}, media ${end}`;
  return endOfLife({ scene: scene.at({ end }), facts: own, found, last, place: found.end?.point ?? 0 }, name);
}
