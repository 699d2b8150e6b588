import { filtersOf } from "../../life/filtersOf.js";
import { assumedMakeOf, oneBetaOf } from "../../life/Guess.js";
import { isUncertain, lifeDraws } from "../../spread/lifeDraws.js";
import type { Asked } from "../Asked.js";
import type { LifeScene } from "../life/lifeFacts.js";
import { interval } from "../life/measureSteps.js";
import type { Step } from "../Step.js";
import { chanceErrorStep, chanceStep, countStep, type Drawn, quantileStep } from "./drawn.js";
import type { FigureMaker } from "./FigureMaker.js";

const SPREAD = "Spread of the life";

/** What draws of all that is uncertain make of the life. */
export function lifeSpread(life: LifeScene, { draws = 400, seed = 1 }: Asked): FigureMaker[] {
  const { system } = life.facts;
  if (!isUncertain(system)) return [];
  const filters = filtersOf(system).filter(({ blocked }) => !blocked);
  const makes = new Set(filters.flatMap((filter) => assumedMakeOf(filter) ?? []));
  const betas = new Set(filters.flatMap((filter) => oneBetaOf(filter) ?? []));
  const also = [
    ...[...makes].map((make) => `handbook capacity of ${make}, evenly over its logarithm`),
    ...[...betas].map(
      (beta) => `catch of elements known by ${knownBy(beta)} m alone, from the least to the most it may be`,
    ),
  ];
  const drawn = (): Drawn => {
    const slice = { from: 0, to: draws, seed };
    return {
      system,
      seed,
      also,
      draws: life.scene.kept(`life draws ${draws} ${seed}`, () => lifeDraws(system, slice)),
    };
  };
  const figure = (name: string, make: () => Step | null): FigureMaker => ({ group: SPREAD, name, make, slow: true });
  const shares = { low: "10 %", middle: "50 %", high: "90 %" } as const;
  const before = (which: "usual" | "longest") => {
    const time = interval(life, which)?.value ?? 0;
    return (own: number) => own < time;
  };
  const chances = (["usual", "longest"] as const).flatMap((which) => {
    const name = `chance of an end before the ${which === "usual" ? "service" : "longest"} interval`;
    return [
      figure(name, () => chanceStep(drawn(), name, before(which))),
      figure(`standard error of the ${name}`, () => chanceErrorStep(drawn(), name, before(which))),
    ];
  });
  return [
    ...(Object.keys(shares) as (keyof typeof shares)[]).map((which) => {
      const name = `life, ${shares[which]} of draws`;
      return figure(name, () => quantileStep(drawn(), which, { name, unit: "s", kind: "running time" }));
    }),
    ...chances,
    figure("draws of the life", () => countStep(drawn(), "draws of the life")),
  ];
}

/** What a catch is known by, in words: a rating by its name, a stated beta by its number. */
function knownBy(beta: string): string {
  return /^\d/.test(beta) ? `beta ${beta}` : beta.replace(/^absolute/, "an absolute rating");
}
