import type { LifeAnswer } from "@thirstline/study";
import { DRAWS } from "../life/LifeWork.js";
import type { FigureShown } from "../words/wordsHtml.js";
import { asButtons, leavesIn } from "./liveFigures.js";

/** The live figures of what is said of a life: with draws those the page drew, and of one element the one that is meant. */
export function lifeFigures({ elements }: LifeAnswer): FigureShown {
  const [first, ...rest] = [...elements].sort((a, b) => b.share - a.share);
  const most = elements.reduce<(typeof elements)[number] | undefined>(
    (fullest, one) => (fullest === undefined || one.restriction > fullest.restriction ? one : fullest),
    undefined,
  );
  const alone = first && rest.every(({ share }) => Math.abs(share - first.share) >= 1e-6 * first.share);
  const live = leavesIn("life", {
    restriction: most && { figure: `resistance over clean of ${most.name}`, asked: {} },
    // Several that go together are said with one share, which is no figure of its own.
    share: alone ? { figure: `share of the rise of ${first.name}`, asked: {} } : undefined,
  });
  return asButtons((key, text) => {
    const leaf = live(key, text);
    return leaf !== null && key === "chance" ? { ...leaf, asked: { ...leaf.asked, ...DRAWS } } : leaf;
  });
}
