import type { System, SystemPart } from "@thirstline/spec/system";
import type { Lesson } from "../Lesson.js";
import { of, text, times } from "../words.js";
import { dropOf, pointOf, timeOf } from "../yard/answers.js";
import { lifeOf } from "../yard/lifeOf.js";

const ONE = "prefilter A";

/** What a second element beside the first does to flow, drop and hours. */
export const twoInParallel: Lesson = {
  id: "two-in-parallel",
  title: "Two side by side",
  after: "say what a second element beside the first does to the drop and to the hours",
  tell: (yard) => {
    const heron = yard("heron.yaml");
    const beside = (count: number) => withPrefilters(heron, count);
    const point = pointOf(beside(1));
    const [one, two] = [dropOf(beside(1), ONE), dropOf(beside(2), ONE)];
    const [oneLife, twoLife] = [lifeOf(prefiltersAlone(beside(1))), lifeOf(prefiltersAlone(beside(2)))];
    const longer = timeOf(twoLife) / timeOf(oneLife);
    const [wholeOne, wholeTwo] = [lifeOf(beside(1)), lifeOf(beside(2))];
    const soil = (answer: typeof oneLife) => answer.elements.find(({ name }) => name === ONE)?.soil ?? Number.NaN;
    return {
      machine: beside(1),
      situation: [
        text`Heron's duplex prefilter has its lever over to one side: all ${of(point.suctionFlow, "flow")} go through one element. It is new, and it costs ${of(one, "pressure")}.`,
        text`The engineer puts the lever in the middle, so that both elements, alike and new, share the flow.`,
      ],
      first: {
        form: "number",
        ask: text`What does the pair cost now?`,
        label: "Drop across the pair",
        kind: "pressure",
        reads: "drop",
        right: two,
        near: 0.2,
        because: text`Each carries half the flow, and in a medium the drop goes with the flow. The pair's drop is the drop of either: they begin and end at the same two points.`,
        slips: [
          { value: one, misses: text`The elements have not changed, but what goes through each has.` },
          {
            value: one * 2,
            misses: text`Drops add up one behind the other. Side by side the flow divides, and each drop with it.`,
          },
          {
            value: one / 4,
            misses: text`A quarter would be right where the drop goes with the flow squared, as in a sharp bend. In a medium it goes with the flow itself.`,
          },
        ],
        otherwise: text`Ask first how much goes through each element.`,
      },
      shows: {
        caption: text`Put more of the same elements side by side. The path fans out, and the step at the prefilters shrinks; each further one gives less.`,
        control: {
          by: "choice",
          label: "Prefilters side by side",
          options: [1, 2, 3, 4].map((count) => ({ label: [of(count, "plain")], value: count })),
          start: 2,
        },
        system: beside,
        figure: (count) => ({ draws: "path", system: beside(count) }),
        reads: (count) => [
          { label: "through each element", words: [of(pointOf(beside(count)).suctionFlow / count, "flow")] },
          { label: "drop of the prefilters", words: [of(dropOf(beside(count), ONE), "pressure")] },
          {
            label: "hours until the prefilters meet the vacuum limit",
            words: [of(timeOf(lifeOf(prefiltersAlone(beside(count)))), "running time")],
          },
        ],
      },
      explanation: [
        text`Twice the area, half the flow through each piece of it: half the drop of the medium. What the bodies and the hoses cost is another matter, and a second element does nothing for the hoses.`,
        text`The hours more than double, by two steps. Each element gets half the dirt in an hour: that alone doubles them. And since each carries half the flow, it may get ${times(soil(twoLife) / soil(oneLife))} times as much soil on it before the gauge reads the same. Together: ${times(longer)} times.`,
        text`That counts the prefilters alone. On the ship another limit may come first: with the fine filter left on, a limit is met after ${of(timeOf(wholeOne), "running time")} with one prefilter and ${of(timeOf(wholeTwo), "running time")} with two. A bank moves the trouble on to the next in line.`,
        text`How steeply an element closes as it fills is assumed here, not measured. A gauge shows it.`,
      ],
      working: [
        text`drop of the pair = drop of one × (flow through each ÷ all the flow)`,
        text`${of(one, "pressure")} × ${of(point.suctionFlow / 2, "flow")} ÷ ${of(point.suctionFlow, "flow")} ≈ ${of(two, "pressure")}`,
      ],
      explains: ["drop of prefilter A", "flow in prefilter A"],
      second: {
        form: "choice",
        ask: text`One prefilter meets the vacuum limit after ${of(timeOf(oneLife), "running time")}, if nothing else stops the engine first. How long does a pair take?`,
        choices: [
          {
            label: text`As long: the fuel is just as dirty`,
            right: longer < 1.5,
            answer: text`The fuel is as dirty, but the dirt now falls on two elements instead of one.`,
          },
          {
            label: text`Twice as long: half the dirt for each`,
            right: longer >= 1.5 && longer < 2.5,
            answer: text`Half the dirt for each is the first half of it. The second: at half the flow a soiled element costs half as much, so each may get dirtier before the gauge reads the limit.`,
          },
          {
            label: text`More than that: about ${times(Number(longer.toPrecision(2)))} times`,
            right: longer >= 2.5,
            answer: text`Half the dirt for each, and at half the flow each may get dirtier before the gauge reads the limit. Both count.`,
          },
        ],
      },
      safety: [
        text`Changing over a duplex with the engine running is for those who know this machine, and as its manual says: an element that was opened holds air until it is bled.`,
      ],
    };
  },
};

/** The ferry with so many of its prefilters side by side; one stands alone. */
function withPrefilters(heron: System, count: number): System {
  const { spreads: _, ...rest } = heron;
  const suction = rest.suction.map((part): SystemPart => {
    if (part.part !== "bank") return part;
    const [like] = part.branches[0] ?? [];
    if (like === undefined) throw new Error("the bank has no branch");
    const branches = Array.from({ length: count }, (_, at) => [
      { ...like, name: `prefilter ${"ABCD"[at] ?? at + 1}` } as SystemPart,
    ]);
    return count === 1 ? { ...like } : { ...part, branches };
  });
  return { ...rest, suction };
}

/** The same as far as the pump, with nothing asked of the delivery side. */
function prefiltersAlone({ delivery: _, ...system }: System): System {
  return { ...system, limits: { ...system.limits, feedPressure: 0 } };
}
