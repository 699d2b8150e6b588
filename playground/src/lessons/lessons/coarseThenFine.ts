import type { System } from "@thirstline/spec/system";
import type { LifeAnswer } from "@thirstline/study";
import type { Lesson } from "../Lesson.js";
import { named, of, text, type Words } from "../words.js";
import { codeAtEnd, countsAtEnd, timeOf } from "../yard/answers.js";
import { filterOf, withFilters } from "../yard/changes.js";
import { lifeOf } from "../yard/lifeOf.js";

const FRONT = "prefilter P5";
const FINE = "fine filter F3";
const COARSE = 30e-6;
/** Hours that differ by less than this share are the same, with what is known of the elements. */
const SAME = 0.2;

/** What staging buys and what it does not. */
export const coarseThenFine: Lesson = {
  id: "coarse-then-fine",
  title: "Coarse, then fine",
  after: "say which of two elements in a row fills first, and what the first one buys",
  tell: (yard) => {
    const single = yard("pickup-single.yaml");
    const staged = yard("pickup-staged.yaml");
    const [beta] = filterOf(staged, FRONT).betas ?? [];
    if (beta === undefined) throw new Error(`${FRONT} states no beta`);
    const withFront = (size: number): System =>
      withFilters(staged, [FRONT], (filter) => ({ ...filter, betas: [{ size, beta: beta.beta }] }));
    const [alone, both, coarse] = [lifeOf(single), lifeOf(staged), lifeOf(withFront(COARSE))];
    const cleaner = codeAtEnd(single) !== codeAtEnd(staged);
    const longer = timeOf(both) / timeOf(alone) - 1 > SAME;
    const first = firstOf(coarse);
    return {
      machine: single,
      situation: [
        text`A pickup has one fine element behind its lift pump: beta ${of(beta.beta, "plain")} at ${of(filterOf(single, FINE).betas?.[0]?.size ?? 0, "particle size")}. With the fuel it gets, the calculation has a limit met after ${hoursOf(alone)}. Nobody has tested what the element holds, so that is a wide guess.`,
        text`The owner puts a second element in front of the pump, of the same area and rated at ${of(beta.size, "particle size")}.`,
      ],
      first: {
        form: "choice",
        ask: text`What does the element in front buy?`,
        choices: [
          {
            label: text`Far longer between stops, and cleaner fuel`,
            right: longer && cleaner,
            answer: text`Cleaner, yes. But nearly all the dirt that used to fill the fine element now fills the one in front, and when that is full the pickup stops all the same.`,
          },
          {
            label: text`Cleaner fuel; the hours stay about the same`,
            right: !longer && cleaner,
            answer: text`The code at the injection pump goes from ${named(codeAtEnd(single))} to ${named(codeAtEnd(staged))}. The hours go from ${of(timeOf(alone), "running time")} to ${of(timeOf(both), "running time")}, which is no difference with what is known of these elements.`,
          },
          {
            label: text`Far longer between stops; the fuel stays as it was`,
            right: longer && !cleaner,
            answer: text`Two sieves one behind the other catch more than one: the fuel does get cleaner. The hours do not follow, because the dirt has to go somewhere.`,
          },
          {
            label: text`Nothing: the fine element decides alone`,
            right: !longer && !cleaner,
            answer: text`The fine element lets a little through, and of that little the one in front has already taken most. Two in a row multiply.`,
          },
        ],
      },
      shows: {
        caption: text`Try other elements in front. See what each catches, and what is left in the fuel at the injection pump.`,
        control: {
          by: "choice",
          label: "Size at which the element in front has its beta",
          options: [3e-6, beta.size, 10e-6, 20e-6, COARSE].map((size) => ({
            label: [of(size, "particle size")],
            value: size,
          })),
          start: beta.size,
        },
        system: withFront,
        figure: (size) => ({
          draws: "particles",
          title: "Particles left in the fuel",
          answer: lifeOf(withFront(size)),
        }),
        reads: (size) => readings(withFront(size), single),
      },
      explanation: [
        text`Most of the weight of dirt is in its large particles, and both elements stop those. Whichever comes first takes them: here the one in front takes ${of(shareOf(both, FRONT), "ratio")} of the soil. So it fills first, and it sets the hours.`,
        text`What staging buys is cleanliness, because what one lets through the next stops again; and a lift pump that gets cleaned fuel. What it does not buy by itself is hours: for those, add area, or choose the two so that they fill together. A coarser element in front moves some dirt to the one behind: at ${of(COARSE, "particle size")} a limit is met after ${of(timeOf(coarse), "running time")}.`,
        text`Not known: whether dirt of the yard is spread over sizes as test dust is. With much fine dirt the element behind takes a larger share. The gauges tell.`,
      ],
      working: [
        text`let through by both = let through by the first × let through by the second`,
        text`soil in front ${of(soilOf(both, FRONT), "soil")}, behind it ${of(soilOf(both, FINE), "soil")}`,
      ],
      explains: [],
      second: {
        form: "choice",
        ask: text`The owner swaps the element in front for one rated at ${of(COARSE, "particle size")}. Which of the two sets the hours now?`,
        choices: [
          {
            label: text`The fine one: so coarse an element hardly catches anything`,
            right: first === FINE,
            answer: text`It catches few of the many small particles, but those weigh next to nothing. Of the weight it still takes ${of(shareOf(coarse, FRONT), "ratio")}.`,
          },
          {
            label: text`Still the one in front`,
            right: first === FRONT,
            answer: text`It lets most particles by, but the few large ones carry the weight: it still takes ${of(shareOf(coarse, FRONT), "ratio")} of the soil and has the larger share of the rise.`,
          },
          {
            label: text`Neither: now nothing fills`,
            right: false,
            answer: text`Dirt that is caught stays somewhere. What the first lets by, the second takes.`,
          },
        ],
      },
      sources: [
        text`Dirt in the pickup's fuel: the mean over ten stations of one city, in a presentation to ASTM D02.14. What its elements hold: handbook figures for cellulose, from memory. Filters in two stages: US Army TM 9-8000.`,
      ],
    };
  },
};

function hoursOf({ range, end }: LifeAnswer): Words {
  const [low, high] = [range?.early ?? null, range?.late ?? null];
  const middle = end?.time ?? Number.NaN;
  if (low === null || high === null) return [of(middle, "running time")];
  return [of({ low, middle, high }, "running time")];
}

function soilOf({ elements }: LifeAnswer, name: string): number {
  return elements.find((one) => one.name === name)?.soil ?? Number.NaN;
}

function shareOf(answer: LifeAnswer, name: string): number {
  return soilOf(answer, name) / answer.elements.reduce((sum, { soil }) => sum + soil, 0);
}

function firstOf({ elements }: LifeAnswer): string {
  return [...elements].sort((one, two) => two.share - one.share)[0]?.name ?? "";
}

function readings(staged: System, single: System) {
  const answer = lifeOf(staged);
  return [
    { label: "soil in front, of all", words: [of(shareOf(answer, FRONT), "ratio")] },
    { label: "hours to a limit", words: hoursOf(answer) },
    { label: "left at the injection pump, of each size", words: countsAtEnd(staged) },
    { label: "code at the injection pump", words: [named(answer.cleanliness.at(-1)?.code ?? "none")] },
    { label: "with the fine element alone", words: [named(codeAtEnd(single))] },
  ];
}
