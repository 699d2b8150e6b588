import { type CodeSize, dirtierThan, parseCode } from "@thirstline/core";
import { type AskedRating, reachesRating } from "./betaAt.js";
import { filterPlaces } from "./places.js";
import type { SwapReason, SwapSide } from "./SwapAnswer.js";
import type { SwapFacts } from "./SwapFacts.js";

const SIZES: Readonly<Record<CodeSize, string>> = { at4: "4", at6: "6", at14: "14" };

/** Whether the pump stays protected as its manual asks. */
export function protectionReasons(facts: SwapFacts, rating: AskedRating | null): SwapReason[] {
  return [...codeReasons(facts), ...(rating ? ratingReasons(facts, rating) : [])];
}

function codeReasons({ system, now, then, fineness }: SwapFacts): SwapReason[] {
  const asked = system.protection?.code;
  const noCoarser = fineness === "same" || fineness === "finer";
  if (asked === undefined) {
    // Without a word from the manual, what is fitted is all there is to go by.
    return noCoarser
      ? [{ weight: "note", code: "no coarser than now", fineness }]
      : [{ weight: "cannot say", code: "protection not known", why: "what is asked", fineness }];
  }
  if (then.code === null) {
    return noCoarser
      ? [{ weight: "note", code: "no coarser than now", fineness }]
      : [{ weight: "cannot say", code: "protection not known", why: whyNoCode(then), fineness }];
  }
  const sizes = dirtierThan(parseCode(then.code), parseCode(asked)).map((size) => SIZES[size]);
  if (sizes.length > 0) {
    // An element of unknown catch counts as catching nothing, which may be too harsh.
    if (!then.captureKnown) {
      return [{ weight: "cannot say", code: "protection not known", why: "its catch", fineness }];
    }
    return [{ weight: "no", code: "coarser than asked", found: then.code, asked, sizes }];
  }
  const kept: SwapReason = { weight: "note", code: "protection kept", found: then.code, asked };
  if (fineness === "coarser") return [kept, { weight: "care", code: "coarser than now" }];
  const before = now.code !== null && dirtierThan(parseCode(now.code), parseCode(asked)).length === 0;
  if (!before || fineness !== "finer" || now.code === null) return [kept];
  return [{ weight: "note", code: "finer than asked", now: now.code, found: then.code, asked }];
}

function whyNoCode({ lifeReasons }: SwapSide): "its catch" | "the delivered fuel" | "the duty" {
  const codes = lifeReasons.map(({ code }) => code);
  if (codes.includes("no delivered fuel") || codes.includes("no solids")) return "the delivered fuel";
  return codes.includes("no duty") ? "the duty" : "its catch";
}

function ratingReasons({ changed }: SwapFacts, rating: AskedRating): SwapReason[] {
  const reached = filterPlaces(changed).map(({ part }) => reachesRating(part, rating));
  if (reached.includes(true)) return [];
  return reached.includes(null)
    ? [{ weight: "cannot say", code: "rating not known", ...rating }]
    : [{ weight: "no", code: "rating not met", ...rating }];
}
