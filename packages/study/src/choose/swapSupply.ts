import type { CheckPoint } from "../check/CheckAnswer.js";
import { check } from "../check/check.js";
import type { SwapReason } from "./SwapAnswer.js";
import type { SwapFacts } from "./SwapFacts.js";

/** From this chance of starving before the interval on it takes care; common practice, no source. */
const CHANCE = 0.05;

/** Whether the engine gets its fuel with the other element, and for how long. */
export function supplyReasons(facts: SwapFacts): SwapReason[] {
  return [...flowReasons(facts), ...lifeReasons(facts)];
}

function flowReasons({ changed, temperatures, then }: SwapFacts): SwapReason[] {
  const { points } = check(changed, { temperatures });
  const worst = (verdict: CheckPoint["verdict"]) => points.find((point) => point.verdict === verdict);
  const starving = worst("starves");
  const unsure = worst("cannot say");
  const tight = worst("tight");
  return [
    ...(starving ? [{ weight: "no", code: "starves", point: starving, below: then.starves } as const] : []),
    ...(unsure ? [{ weight: "cannot say", code: "not judged", point: unsure } as const] : []),
    ...(tight ? [{ weight: "care", code: "tight", point: tight } as const] : []),
  ];
}

function lifeReasons({ system, now, then }: SwapFacts): SwapReason[] {
  const interval = system.service?.interval ?? null;
  const source = system.service?.source ?? null;
  if (!then.lifeKnown) {
    // What the file itself leaves open is open with any element.
    const weight = now.lifeKnown ? "cannot say" : "note";
    return [{ weight, code: "life not known", reasons: then.lifeReasons }];
  }
  if (interval === null) return [];
  const early = then.life !== null && then.life < interval;
  if (early) {
    // What starves from the first has been said already.
    return then.life === 0 ? [] : [{ weight: "no", code: "early", time: then.life ?? 0, interval, source }];
  }
  if (then.fillingUnknown) return [{ weight: "cannot say", code: "filling not known", why: then.fillingUnknown }];
  const unsettled = then.lifeReasons.filter(({ code }) => code === "unsettled");
  if (unsettled.length > 0) return [{ weight: "cannot say", code: "life not known", reasons: unsettled }];
  const { spread } = then;
  if (spread && spread.chance >= CHANCE) {
    const { chance, chanceError, draws } = spread;
    return [{ weight: "care", code: "may starve early", chance, chanceError, interval, draws }];
  }
  return [{ weight: "note", code: "lasts", time: then.life, interval }];
}
