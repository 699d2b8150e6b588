import type { System } from "@thirstline/spec/system";
import { lifeDraws } from "@thirstline/study";

/** Draws between two words on how far they are. */
const SLICE = 25;

/** The seed of the command line, so that both draw alike. */
const SEED = 1;

/** The lives of several systems in so many draws each, telling after every few how many are done of all. */
export function drawLives(
  systems: readonly System[],
  draws: number,
  tell: (done: number, of: number) => void,
): Float64Array[] {
  const of = systems.length * draws;
  return systems.map((system, place) => {
    const lives = new Float64Array(draws);
    for (let from = 0; from < draws; from += SLICE) {
      const to = Math.min(draws, from + SLICE);
      lives.set(lifeDraws(system, { from, to, seed: SEED }), from);
      tell(place * draws + to, of);
    }
    return lives;
  });
}
