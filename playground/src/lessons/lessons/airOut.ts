import type { Lesson } from "../Lesson.js";
import { named, of, text, type Words } from "../words.js";
import { airOf, pointOf, rowOf } from "../yard/answers.js";
import { withFilters } from "../yard/changes.js";

const ELEMENTS = ["prefilter A", "prefilter B"];
const LEAK = "pump line";
/** Joints from the tank on, each behind a part of the path. */
const JOINTS = [
  { behind: "port tank", label: "at the tank" },
  { behind: "elbows", label: "foot of the climb" },
  { behind: "rise", label: "top of the climb" },
  { behind: "prefilter A", label: "behind a prefilter" },
  { behind: LEAK, label: "at the pump's inlet" },
  { behind: "delivery line", label: "behind the pump" },
];

/** Which way round an element goes, where a loose joint draws air, and how the air is got out again. */
export const airOut: Lesson = {
  id: "air-out",
  title: "Which way round, and getting the air out",
  after: "fit an element the right way, find where a line draws air, and bleed in the right order",
  tell: (yard) => {
    const heron = yard("heron.yaml");
    const point = pointOf(heron);
    const air = airOf(point);
    const over = (behind: string) => (rowOf(point, behind).pressure ?? Number.NaN) - air;
    const leak = over(LEAK);
    const backwards = withFilters(heron, ELEMENTS, (filter) => ({ ...filter, reversed: true }));
    const [right, wrong] = [point.vacuum.middle, pointOf(backwards).vacuum.middle];
    const change = wrong - right;
    const vacuum = (value: number) => of(value, "vacuum");
    const joint = (at: number) => JOINTS[at] ?? { behind: LEAK, label: "" };
    return {
      machine: heron,
      situation: [
        text`Heron runs at full load. At the hose clip where her pump line meets the lift pump a screw has worked loose: a hair's breadth, no more.`,
        text`The vacuum gauge at that place reads ${vacuum(point.vacuum.middle)}.`,
      ],
      first: {
        form: "choice",
        ask: text`What is to be seen at the clip while the engine runs?`,
        choices: [
          {
            label: text`Fuel drips from it`,
            right: leak > 0,
            answer: text`Fuel comes out where the pressure inside is above the air. Here it is ${of(-leak, "pressure")} below: the air pushes in.`,
          },
          {
            label: text`Nothing: it is dry, and air goes in`,
            right: leak < 0,
            answer: text`Inside the line is ${of(-leak, "pressure")} less than the air outside. So air goes in and no fuel comes out, and the leak stays unseen. It shows as bubbles in a clear piece of hose, and as an engine that hunts.`,
          },
          {
            label: text`Both: a drip, and some air`,
            right: false,
            answer: text`At one place and one time there is either more pressure inside or less. While the engine pulls it is less. Standing still it may drip, if the tank's level lies above it.`,
          },
          {
            label: text`Nothing at all: a hair's breadth does not matter`,
            right: false,
            answer: text`Fuel might seal so small a gap. Air does not care: it is far thinner, and a little air in the line is a lot of room in the injection pump.`,
          },
        ],
      },
      shows: {
        caption: text`Loosen one joint after another and read what is inside against the air outside.`,
        control: {
          by: "choice",
          label: "The loose joint",
          options: JOINTS.map(({ label }, at) => ({ label: [named(label)], value: at })),
          start: JOINTS.findIndex(({ behind }) => behind === LEAK),
        },
        system: () => heron,
        figure: () => ({ draws: "path", system: heron }),
        reads: (at) => [
          {
            label: "pressure inside",
            words: [of(rowOf(point, joint(at).behind).pressure ?? Number.NaN, "absolute pressure")],
          },
          { label: "the air outside", words: [of(air, "absolute pressure")] },
          { label: "so this joint", words: doing(over(joint(at).behind)) },
        ],
      },
      explanation: [
        text`From somewhere on the climb to the pump's inlet the line is under less than the air's pressure, and every joint there draws air rather than drips. Behind the pump it is the other way about. The drawing shows where: under the line marked "air" a leak is dry.`,
        text`Which way round: dirty fuel enters where the maker marked IN or where the arrow begins. In most spin-on bodies it comes in through the outer ring of holes and leaves through the middle, so that the dirt stays outside on the folds. A filter put in backwards passes fuel all the same. What it catches is then anybody's guess, and the dirt it held may be washed on.`,
        text`Filling a new element before it is fitted is for the manual to say. One published manual forbids it and has the air taken out with the priming pump. The reason commonly given: what is poured into the middle goes on unfiltered. Where the manual allows it, pour into the dirty side, from a clean can.`,
        text`Bleeding goes with the fuel, from the tank on: first the filter nearest to the tank, then the next, then the injection pump, then the injectors. Close each screw while fuel without bubbles still runs. So no air is pushed on into what was bled already.`,
      ],
      working: [
        text`pressure inside − air outside: under nothing it draws, over nothing it drips`,
        text`${of(rowOf(point, LEAK).pressure ?? Number.NaN, "absolute pressure")} − ${of(air, "absolute pressure")} ≈ ${of(leak, "pressure")}`,
      ],
      explains: ["pressure behind pump line"],
      second: {
        form: "choice",
        ask: text`Both new prefilters were put in against their flow arrows. With clean elements, the right way round, the gauge read ${vacuum(right)}. What does the calculation have it read now?`,
        choices: [
          {
            label: text`More: the fuel goes against the grain`,
            right: change > 0.02 * right,
            answer: text`A clean medium is much the same from either side. It is the catching that has a right side, not the passing.`,
          },
          {
            label: text`The same`,
            right: Math.abs(change) <= 0.02 * right,
            answer: text`The same ${vacuum(wrong)}: the gauge cannot tell. Only your eyes on the arrow can, before the element goes in. What it catches that way nobody has tested.`,
          },
          {
            label: text`Less: it lets the fuel through more easily`,
            right: change < -0.02 * right,
            answer: text`Backwards is not open. The fuel still goes through every pore; only the folds, the seal and the catching were made for the other way.`,
          },
        ],
      },
      safety: [
        text`Bleeding an injector pipe lets fuel out at a pressure that goes through skin: crank only as the manual says, keep hands away and wear eye protection. Catch what runs out, mind hot parts, no flame.`,
        text`On a ferry this work is for licensed people. The manual decides on filling, order and torque.`,
      ],
      sources: [
        text`Never fill before fitting: US Army TM 5-3895-383-24, for one machine. Any leak in suction draws air: TM 9-2320-280-20-1. The way through a spin-on body, filling on the dirty side and the order of bleeding: common practice, no source.`,
      ],
    };
  },
};

function doing(over: number): Words {
  return over < 0 ? text`draws air, ${of(-over, "pressure")} under` : text`drips fuel, ${of(over, "pressure")} over`;
}
