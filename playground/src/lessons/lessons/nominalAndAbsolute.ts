import type { System } from "@thirstline/spec/system";
import type { Lesson } from "../Lesson.js";
import { named, of, text } from "../words.js";
import { codeAtEnd, countsAtEnd } from "../yard/answers.js";
import { filterOf, withFilters } from "../yard/changes.js";
import { lifeOf } from "../yard/lifeOf.js";

const ELEMENT = "bowl filter B10";
const ARRIVE = 1000;
/** What "absolute" is taken to stand for: common practice, no source. */
const ABSOLUTE = 75;

/** What a beta ratio says that a nominal rating does not. */
export const nominalAndAbsolute: Lesson = {
  id: "nominal-and-absolute",
  title: "Nominal, absolute and beta",
  after: "read a beta ratio, and know what a nominal rating does not tell you",
  tell: (yard) => {
    const generator = yard("generator.yaml");
    const [point] = filterOf(generator, ELEMENT).betas ?? [];
    if (point === undefined) throw new Error(`${ELEMENT} states no beta`);
    const { size, beta } = point;
    const withBeta = (value: number): System =>
      withFilters(generator, [ELEMENT], (filter) => ({ ...filter, betas: [{ size, beta: value }] }));
    const through = (value: number) => of(ARRIVE / value, "plain");
    const micron = of(size, "particle size");
    const chance = (share: number) => share * ARRIVE;
    const offered = [0, chance(1 / 100), chance(1 / beta), chance(1 - 1 / beta)];
    const ideas = [
      text`That is what the number on the packet seems to promise. No medium is a sieve with one size of hole: some always find a wide one.`,
      text`Beta is not a share in a hundred. It is how many arrive for each one that goes through.`,
      text`Beta is how many arrive for each one that goes through: here ${of(beta, "plain")} for one. So of a thousand ${through(beta)} go through and the rest stay.`,
      text`Those are the ones that stay. Beta counts how many arrive for each one that goes through.`,
    ];
    return {
      machine: generator,
      situation: [
        text`The standby generator has one bowl filter. Its maker's sheet gives a beta ratio of ${of(beta, "plain")} at ${micron}: on the test bench particles of ${micron} and larger were counted in front of it and behind it.`,
        text`A thousand such particles come down the pipe.`,
      ],
      first: {
        form: "choice",
        ask: text`How many of the thousand go through the element?`,
        choices: offered.map((count, at) => ({
          label: count === 0 ? text`None` : text`About ${of(count, "plain")}`,
          right: count === ARRIVE / beta,
          answer: ideas[at] ?? [],
        })),
      },
      shows: {
        caption: text`Fit elements with other betas at the same size and see how much dirt is left in the fuel, place by place.`,
        control: {
          by: "choice",
          label: "Beta of the element at the size of its rating",
          options: [2, beta, ABSOLUTE, 200, 1000].map((value) => ({ label: [of(value, "plain")], value })),
          start: beta,
        },
        system: withBeta,
        figure: (value) => ({
          draws: "particles",
          title: "Particles left in the fuel",
          answer: lifeOf(withBeta(value)),
        }),
        reads: (value) => [
          { label: "of a thousand, go through", words: [through(value)] },
          { label: "stay in the element", words: [of(1 - 1 / value, "ratio")] },
          { label: "left at the engine, of each size", words: countsAtEnd(withBeta(value)) },
          { label: "code at the engine", words: [named(codeAtEnd(withBeta(value)))] },
        ],
      },
      explanation: [
        text`Beta is a count in front over a count behind, at a size, in a test that anyone can repeat (ISO 16889, and ISO 19438 for fuel). Beta ${of(2, "plain")} stops half, beta ${of(ABSOLUTE, "plain")} stops all but ${of(1 / ABSOLUTE, "ratio")}.`,
        text`"Absolute" is commonly taken as beta ${of(ABSOLUTE, "plain")} at the size named: common practice, no source. Some makers mean more by it. Ask for the beta.`,
        text`"Nominal" has no agreed test behind it. Two makers' nominal ratings cannot be compared, and nothing can be reckoned from one: not what it catches, not how clean the fuel gets.`,
        text`A beta from test dust, in a steady test, is not a promise for the dirt and the vibration of the yard. It is the best there is.`,
      ],
      working: [
        text`beta = particles in front ÷ particles behind`,
        text`${of(ARRIVE, "plain")} ÷ ${of(beta, "plain")} = ${through(beta)} go through`,
      ],
      explains: [],
      second: {
        form: "choice",
        ask: text`The parts counter has another element. Its packet says "${micron} nominal" and nothing else. A thousand particles of ${micron} and larger come: how many go through?`,
        choices: [
          {
            label: text`None: that is its rating`,
            right: false,
            answer: text`A rating that stopped everything of its size would be more than absolute. "Nominal" promises nothing you could hold its maker to.`,
          },
          {
            label: text`About ${through(beta)}, as with the other: the number is the same`,
            right: false,
            answer: text`The number is the same, the test behind it is not. Of the first element somebody counted; of this one you have a word on a packet.`,
          },
          {
            label: text`About half: that is what nominal means`,
            right: false,
            answer: text`Some makers have used it so, others for far more or by weight of dust. As long as the packet does not say, it is a guess.`,
          },
          {
            label: text`Nobody can say`,
            right: cannotSay(generator),
            answer: text`No test, no figure. Ask the maker for the beta, or stay with the element the manual names.`,
          },
        ],
      },
      sources: [
        text`The beta ratio: ISO 16889 and ISO 19438. What makers mean by "nominal": common practice, no source.`,
      ],
    };
  },
};

/** Whether the study, too, refuses to reckon with a nominal rating alone. */
function cannotSay(system: System): boolean {
  const nominal = withFilters(system, [ELEMENT], ({ betas: _, ...filter }) => filter);
  return lifeOf(nominal).cautions.some((one) => one.code === "capture unknown" && one.why === "nominal rating");
}
