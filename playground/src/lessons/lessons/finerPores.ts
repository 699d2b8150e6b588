import type { Lesson, Yard } from "../Lesson.js";
import { of, text, times } from "../words.js";
import { dropOf, pointOf } from "../yard/answers.js";
import { costing, filterOf, withFilters } from "../yard/changes.js";

const ELEMENTS = ["prefilter A", "prefilter B"];
/** Pores of the offered element over those fitted, and of the one in the second case with its area over the old. */
const HALF = { pore: 1 / 2, area: 1 };
const THIRD = { pore: 1 / 3, area: 3 };

/** What a finer pore costs, and what area gives back. */
export const finerPores: Lesson = {
  id: "finer-pores",
  title: "What a finer pore costs",
  after: "say what a finer element does to the drop, and how much area buys it back",
  tell: (yard) => {
    const heron = yard("heron.yaml");
    const fitted = (change: Medium) =>
      withFilters(heron, ELEMENTS, (filter) => costing(filter, factorOf(yard, change)));
    const now = dropOf(heron, "prefilter A");
    const costs = (change: Medium) => of(dropOf(fitted(change), "prefilter A"), "pressure");
    const finer = dropOf(fitted(HALF), "prefilter A");
    const third = dropOf(fitted(THIRD), "prefilter A");
    const point = pointOf(heron);
    return {
      machine: heron,
      situation: [
        text`The ferry Heron draws ${of(point.suctionFlow, "flow")} through two prefilters side by side. The fuel is at ${of(heron.temperature, "temperature")} and the elements are new: together they cost ${of(now, "pressure")}.`,
        text`A dealer offers an element for the same body. Its medium has the same area, the same thickness and as much open space in it, but its pores are half as wide.`,
      ],
      first: {
        form: "number",
        ask: text`What will the two prefilters cost with pores half as wide?`,
        label: "Drop across the prefilters",
        kind: "pressure",
        reads: "drop",
        right: finer,
        near: 0.2,
        because: text`Half the pore costs ${times(finer / now)} times the drop, not twice: what a medium lets through goes by the width of its pores, squared.`,
        slips: [
          { value: now, misses: text`The flow is the same, but the way is not: every pore is narrower.` },
          {
            value: now * 2,
            misses: text`Twice is what one would expect if fuel only felt how wide a pore is. It also clings to the wall, and in a narrow pore the wall is near everywhere.`,
          },
          {
            value: now * 8,
            misses: text`Squared, not cubed: each narrow pore passes far less, but there are more of them in the same area.`,
          },
          {
            value: now * 16,
            misses: text`That is the law for one pipe of half the bore. A medium with narrower pores has more of them in the same area, and that gives part of it back.`,
          },
        ],
        otherwise: text`Think of one thing only: how the drop goes with the width of the pores.`,
      },
      shows: {
        caption: text`Make the pores narrower and watch the step at the prefilters grow against the limits.`,
        control: {
          by: "choice",
          label: "Width of the pores, of those fitted now",
          options: [1, 3 / 4, 1 / 2, 1 / 3, 1 / 4].map((pore) => ({ label: [of(pore, "ratio")], value: pore })),
          start: HALF.pore,
        },
        system: (pore) => fitted({ pore, area: 1 }),
        figure: (pore) => ({ draws: "path", system: fitted({ pore, area: 1 }) }),
        reads: (pore) => [
          { label: "drop of the prefilters", words: [costs({ pore, area: 1 })] },
          { label: "against those fitted now", words: text`${times(factorOf(yard, { pore, area: 1 }))} times` },
          { label: "vacuum at the pump", words: [of(pointOf(fitted({ pore, area: 1 })).vacuum.middle, "vacuum")] },
        ],
      },
      explanation: [
        text`Flow through a fine medium is slow and smooth, and there the fuel that touches the wall stands still. The narrower the pore, the more of the fuel is near a wall. So the drop goes with one over the pore's width squared, all else being equal.`,
        text`Area works the other way, and plainly: twice the medium, half the flow through each piece of it, half the drop. To take back half the pore it needs ${times(finer / now)} times the area. That is why fine elements are large or pleated deep.`,
        text`All else is seldom equal: a finer medium may be thinner or more open. A micron rating is not the width of a pore either. Only a flow test of the element settles what it costs.`,
      ],
      working: [
        text`drop = old drop × (old pore ÷ new pore)² × (old area ÷ new area)`,
        text`${of(now, "pressure")} × (${of(1, "times")} ÷ ${of(HALF.pore, "times")})² ≈ ${of(finer, "pressure")}`,
      ],
      explains: ["drop of prefilter A", "vacuum"],
      second: {
        form: "number",
        ask: text`Another dealer has an element with pores a third as wide and three times the area. What would two of those cost?`,
        label: "Drop across the prefilters",
        kind: "pressure",
        reads: "drop",
        right: third,
        near: 0.2,
        because: text`The pores alone cost ${times(factorOf(yard, { pore: THIRD.pore, area: 1 }))} times as much, and the area takes that down to ${times(third / now)} times.`,
        slips: [
          {
            value: now,
            misses: text`Three times the area would make up for three times the drop. A third of the pore costs more than that.`,
          },
          {
            value: dropOf(fitted({ pore: THIRD.pore, area: 1 }), "prefilter A"),
            misses: text`You have the pores right. Now let the flow spread over the larger area.`,
          },
        ],
        otherwise: text`Take it in two steps: first the pores, squared; then divide by the area.`,
      },
      sources: [text`Flow through fine pores: F. A. L. Dullien, Porous Media.`],
    };
  },
};

interface Medium {
  /** over the pore and the area fitted now */
  readonly pore: number;
  readonly area: number;
}

/** What such a change makes of a medium's drop, by the estimate that the study itself makes of a medium from its pores. */
function factorOf(yard: Yard, { pore, area }: Medium): number {
  const paper = yard("dewatering-paper.yaml");
  const name = "paper pick-up filter";
  const { medium } = filterOf(paper, name);
  if (medium.by !== "rating") throw new Error(`${name} is not estimated from a rating`);
  const changed = withFilters(paper, [name], (filter) => ({
    ...filter,
    medium: { ...medium, size: medium.size * pore, area: medium.area * area },
  }));
  return dropOf(changed, name) / dropOf(paper, name);
}
