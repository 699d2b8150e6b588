import type { System } from "@thirstline/spec/system";
import type { Lesson } from "../Lesson.js";
import { of, text, times } from "../words.js";
import { dropOf, pointOf } from "../yard/answers.js";
import { verdictText } from "../yard/verdictText.js";

const FILTER = "prefilter A";
const FROST = 263.15;
/** Below the ferry's cloud point. */
const WAXY = 253.15;

/** How cold works on the drop, and why wax is another matter. */
export const cold: Lesson = {
  id: "cold",
  title: "Cold fuel",
  after: "reckon a warm drop over to a cold morning, and know where reckoning stops",
  tell: (yard) => {
    const heron = yard("heron.yaml");
    const at = (temperature: number): System => ({ ...heron, temperature });
    const [warm, frost, waxy] = [pointOf(heron), pointOf(at(FROST)), pointOf(at(WAXY))];
    const viscosity = (point: typeof warm) => of(point.fuel.kinematicViscosity, "viscosity");
    const thicker = frost.fuel.kinematicViscosity / warm.fuel.kinematicViscosity;
    const [now, then] = [dropOf(heron, FILTER), dropOf(at(FROST), FILTER)];
    const degrees = (temperature: number) => of(temperature, "temperature");
    const cloud = warm.fuel.cloudPoint ?? Number.NaN;
    const plugging = warm.fuel.coldFilterPluggingPoint ?? Number.NaN;
    const cannotSay = waxy.reasons.some(({ code }) => code === "below cloud point");
    return {
      machine: heron,
      situation: [
        text`On a day of ${degrees(heron.temperature)} Heron's prefilters, new and clean, cost ${of(now, "pressure")}. Her fuel then has a viscosity of ${viscosity(warm)}.`,
        text`On a winter morning the fuel in the tank is at ${degrees(FROST)}, and its viscosity is ${viscosity(frost)}. It is still clear: its cloud point is ${degrees(cloud)}.`,
      ],
      first: {
        form: "number",
        ask: text`What do the same clean prefilters cost that morning?`,
        label: "Drop across the prefilters",
        kind: "pressure",
        reads: "drop",
        right: then,
        near: 0.15,
        because: text`The fuel is ${times(thicker)} times as thick, and the medium costs ${times(then / now)} times as much: in slow, smooth flow the drop goes with the viscosity itself.`,
        slips: [
          {
            value: now,
            misses: text`Nothing was fitted and nothing has plugged, true. But thick fuel needs more push through the same pores.`,
          },
          {
            value: now * thicker ** 2,
            misses: text`Squares belong to fast, eddying flow. In a medium the drop goes with the viscosity once.`,
          },
          {
            value: now * Math.sqrt(thicker),
            misses: text`The viscosity counts in full here: nothing of this flow is fast enough to be rid of it.`,
          },
        ],
        otherwise: text`Take the two viscosities and see how many times one goes into the other.`,
      },
      shows: {
        caption: text`Make it colder. Filter and hoses rise together; the climb to the pump does not care.`,
        control: {
          by: "range",
          label: "Temperature of the fuel",
          kind: "temperature",
          reads: "temperature",
          min: 248.15,
          max: 313.15,
          start: FROST,
          cold: true,
        },
        system: at,
        figure: (temperature) => ({ draws: "path", system: at(temperature) }),
        reads: (temperature) => [
          { label: "viscosity", words: [viscosity(pointOf(at(temperature)))] },
          { label: "drop of the prefilters", words: [of(dropOf(at(temperature), FILTER), "pressure")] },
          { label: "vacuum at the pump", words: [of(pointOf(at(temperature)).vacuum.middle, "vacuum")] },
          { label: "says the calculation", words: verdictText(at(temperature)) },
        ],
      },
      explanation: [
        text`Fuel thickens as it cools, faster the colder it gets. Wherever the flow is smooth, in media and in most fuel hoses, the drop grows in the same measure. So read a gauge with a thermometer beside it: the same filter reads ${of(warm.vacuum.middle, "vacuum")} at the pump on the warm day and ${of(frost.vacuum.middle, "vacuum")} on the cold one.`,
        text`Heights do not thicken: the climb from the tank costs nearly the same in any weather.`,
        text`Wax is not thickness. At the cloud point, ${degrees(cloud)} for this fuel, wax begins to come out, and it lies on the medium like dirt. From there down no figure from viscosity is worth anything, and the answer is "cannot say". The plugging point of a laboratory test, ${degrees(plugging)} here, is a figure for that test's own wire screen, not for your element.`,
      ],
      working: [
        text`cold drop = warm drop × (cold viscosity ÷ warm viscosity), nearly`,
        text`${of(now, "pressure")} × ${viscosity(frost)} ÷ ${viscosity(warm)} ≈ ${of(now * thicker, "pressure")}; in full ${of(then, "pressure")}, with the density counted too`,
      ],
      explains: ["fuel viscosity", "drop of prefilter A"],
      second: {
        form: "choice",
        ask: text`The frost goes on and the fuel is at ${degrees(WAXY)}. Its cloud point is ${degrees(cloud)}. What do the clean prefilters cost?`,
        choices: [
          {
            label: text`${of(dropOf(at(WAXY), FILTER), "pressure")}: by the viscosity, as before`,
            right: !cannotSay,
            answer: text`That is what thickness alone would cost. But below the cloud point there is wax on the medium, and no one can reckon how much.`,
          },
          {
            label: text`Nobody can say: there is wax in it`,
            right: cannotSay,
            answer: text`Below the cloud point the calculation gives no promise either. Warm the fuel or the filter, or get fuel for the season, as the manual allows.`,
          },
          {
            label: text`No more than at the cloud point: it is above the plugging point of ${degrees(plugging)}`,
            right: false,
            answer: text`The plugging point comes of a short test with a wire screen and little fuel. A fine element in the frost for a whole morning may plug well above it.`,
          },
        ],
      },
      sources: [
        text`How a laboratory finds them, two European test methods named from memory. Cloud point, EN 23015: fuel is cooled until wax first shows as a haze. Cold filter plugging point, EN 116: cooled fuel is drawn through a small wire screen until it no longer passes in the time allowed.`,
      ],
      safety: [text`Never warm a filter or a line with a flame. Heaters and additives only as the manual says.`],
    };
  },
};
