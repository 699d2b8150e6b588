import type { System } from "@thirstline/spec/system";
import type { CurveFigure } from "../Figure.js";
import type { Lesson } from "../Lesson.js";
import { of, text } from "../words.js";
import { pointOf } from "../yard/answers.js";
import { along, readingsOver, straightOn, timeToRead } from "../yard/readingsOver.js";

const WARM = 291.15;
/** How far the gauge has come of the way from clean to the limit when it is read. */
const COME = 0.25;
/** What the gauge shows one morning in the second case, of its reading with clean elements. */
const LOW = 0.7;
const POINTS = 12;
const HOUR = 3600;
/** The slider ends on a round figure before the limit, s. */
const ROUND = 50 * HOUR;

/** How a vacuum gauge rises with the hours, and what a jump or a low reading means. */
export const readingTheGauge: Lesson = {
  id: "reading-the-gauge",
  title: "Reading the gauge",
  after: "tell from a vacuum gauge how much room is left, and when it is not the filter at all",
  tell: (yard) => {
    const crane = warmCrane(yard("crane.yaml"));
    const point = pointOf(crane);
    const clean = point.vacuum.middle;
    const limit = point.vacuumLimits.atChange ?? Number.NaN;
    const reading = clean + COME * (limit - clean);
    const [read, due] = [timeToRead(crane, reading), timeToRead(crane, limit)];
    const straight = read / COME;
    const line = readingsOver(crane, clean, limit, POINTS);
    const vacuum = (value: number) => of(value, "vacuum");
    const hours = (value: number) => of(value, "running time");
    const low = clean * LOW;
    const figure = (time: number): CurveFigure => ({
      draws: "curve",
      title: "Vacuum at the pump over the running time",
      x: { label: "Running time", kind: "running time" },
      y: { label: "Vacuum at the pump", kind: "vacuum" },
      line,
      other: { label: "if it rose straight", line: straightOn(clean, [read, reading], due) },
      levels: [
        { label: "limit at change", value: limit, tone: "limit" },
        { label: "clean limit", value: point.vacuumLimits.clean ?? Number.NaN, tone: "clean limit" },
      ],
      at: [time, along(line, time)],
    });
    return {
      machine: crane,
      situation: [
        text`The yard crane has a vacuum gauge before its lift pump. The book is lost, so published guidance for another engine serves: change at ${vacuum(limit)}. With new elements, warm fuel and full load the gauge read ${vacuum(clean)}.`,
        text`Now, ${hours(read)} of running later, it reads ${vacuum(reading)} at the same load and with fuel as warm: a quarter of the way to the limit.`,
      ],
      first: {
        form: "number",
        ask: text`At how many running hours, counted from new, will it read ${vacuum(limit)}, if the fuel stays as dirty as it is?`,
        label: "Running time from new",
        kind: "running time",
        reads: "duration",
        right: due,
        near: 0.2,
        because: text`The line bends upwards: dirt first closes pores of which there are plenty, later the few that are left. The second half of the rise takes far less time than the first.`,
        slips: [
          {
            value: straight,
            misses: text`That is the straight line: a quarter of the way in so many hours, the whole way in ${of(1 / COME, "plain")} times as many. An element that fills does not rise straight.`,
          },
          {
            value: read + straight,
            misses: text`That is a straight line, started from today. An element that fills does not rise straight.`,
          },
        ],
        otherwise: text`Think of the shape: does the same weight of dirt cost more on a new element or on one that is nearly full?`,
      },
      shows: {
        caption: text`Move along the hours. The dashed line is what a ruler laid through the two readings would promise.`,
        control: {
          by: "range",
          label: "Running time since new",
          kind: "running time",
          reads: "runningTime",
          min: 0,
          max: Math.floor(due / ROUND) * ROUND,
          start: Math.round(read / HOUR) * HOUR,
        },
        system: () => crane,
        figure,
        reads: (time) => [
          { label: "the gauge reads", words: [vacuum(along(line, time))] },
          { label: "room left to the limit", words: [vacuum(limit - along(line, time))] },
          { label: "hours left", words: [hours(due - time)] },
        ],
      },
      explanation: [
        text`A reading means something beside three others: what it was with clean elements, at which load, and how warm the fuel is. Write all of them down, always at the same load and with the engine warm. Then look at the room that is left, and look more often as it shrinks.`,
        text`How sharply the line bends depends on the element and on the dirt. Here it is assumed, as nobody has measured it: two readings some hours apart are worth more than any assumption.`,
        text`A jump is not ordinary dirt: think of a bad delivery of fuel, of water in an element that swells, of wax on a cold day, of a kinked hose or a rag in the tank. The gauge feels all that lies between it and the tank, not the filter alone.`,
        text`A reading that is too low is no gift. Air drawn in at a joint, an element torn or badly seated, a by-pass open, or a gauge that sticks all read low. A filter cannot clean itself.`,
      ],
      working: [
        text`straight: ${hours(read)} ÷ ${of(COME, "ratio")} ≈ ${hours(straight)}`,
        text`by the filling of the element: ${hours(due)}`,
      ],
      explains: ["vacuum", "limit at change"],
      second: {
        form: "choice",
        ask: text`One morning, same load and fuel as warm, the gauge reads ${vacuum(low)}: less than the ${vacuum(clean)} of new elements. The crane hunts a little. What is the likeliest?`,
        choices: [
          {
            label: text`The prefilter shook itself clean overnight`,
            right: low >= clean,
            answer: text`Even spotless it would read ${vacuum(clean)}. Nothing a filter does can bring the gauge under that at the same load and warmth.`,
          },
          {
            label: text`Air gets in, fuel gets past the element, or the gauge is wrong`,
            right: low < clean,
            answer: text`Clean elements cost what they cost. A gauge that reads less means that less fuel is drawn, that it goes another way, or that the gauge lies. Look for air first, since the engine hunts.`,
          },
          {
            label: text`A good sign: there is more room than before`,
            right: false,
            answer: text`Room is counted from a reading that can be trusted. This one cannot be: clean elements at this load read ${vacuum(clean)}.`,
          },
          {
            label: text`The prefilter is now full`,
            right: false,
            answer: text`A full prefilter reads high, not low, as long as the gauge sits between it and the pump.`,
          },
        ],
      },
      safety: [
        text`Stop the engine and relieve the pressure before a joint is opened to look for air; keep flame away. What the manual says of limits and gauges goes before any guidance.`,
      ],
      sources: [
        text`Limits: a US Army maintenance manual for one engine family, TM 5-3895-346-14. What jumps and low readings mean: common practice, no source.`,
      ],
    };
  },
};

/** The crane in one season, so that its gauge is not read in two kinds of weather. */
function warmCrane({ duty, spreads: _, ...system }: System): System {
  if (duty === undefined) throw new Error("the crane states no duty");
  return {
    ...system,
    temperature: WARM,
    duty: { ...duty, seasons: [{ name: "warm", share: 1, temperature: WARM }] },
  };
}
