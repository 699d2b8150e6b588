import type { System } from "@thirstline/spec/system";
import type { Verdict } from "@thirstline/study";
import { mapParts } from "../../model/parts.js";
import type { Lesson } from "../Lesson.js";
import { of, text, type Words } from "../words.js";
import { dropOf, pointOf } from "../yard/answers.js";
import { costing, withFilters } from "../yard/changes.js";
import { verdictText } from "../yard/verdictText.js";

const ELEMENTS = ["prefilter A", "prefilter B"];
const FROST = 263.15;
/** How much wider the hoses, how much stronger the pump and how much larger the body of the second case are. */
const WIDER = 1.25;
const STRONGER = 1.5;
const LARGER = 4;

/** The ferry with a finer element: well by day, starved on a cold morning. */
export const finerSubstitute: Lesson = {
  id: "finer-substitute",
  title: "The finer substitute",
  after: "say why an element that works in summer can stop an engine in winter, and what would mend it",
  tell: (yard) => {
    const own = yard("heron.yaml");
    const finer = { ...yard("heron-finer.yaml"), name: own.name };
    const at = (temperature: number): System => ({ ...finer, temperature });
    const [warm, cold, ownCold] = [pointOf(finer), pointOf(at(FROST)), pointOf({ ...own, temperature: FROST })];
    const degrees = (temperature: number) => of(temperature, "temperature");
    const [day, frost] = [degrees(finer.temperature), degrees(FROST)];
    const limit = of(warm.vacuumLimits.atChange ?? Number.NaN, "vacuum");
    const gets = (verdict: Verdict) => verdict === "holds" || verdict === "tight";
    const mends = (system: System) => pointOf({ ...system, temperature: FROST }).verdict === "holds";
    const reads = (system: System): Words => [of(pointOf({ ...system, temperature: FROST }).vacuum.middle, "vacuum")];
    const [hoses, pump, body] = [withHoses(finer), withPump(finer), withBody(finer)];
    const both = gets(warm.verdict) && gets(cold.verdict);
    const warmOnly = gets(warm.verdict) && cold.verdict === "starves";
    return {
      machine: finer,
      situation: [
        text`Heron's own prefilters were out of stock, and finer ones went in: same body, same thread. At ${day} they cost ${of(dropOf(finer, "prefilter A"), "pressure")} where her own cost ${of(dropOf(own, "prefilter A"), "pressure")}, and the vacuum at the pump is ${of(warm.vacuum.middle, "vacuum")}.`,
        text`The manual allows ${of(warm.vacuumLimits.clean ?? Number.NaN, "vacuum")} with clean elements and ${limit} at the change. The engine ran all day. Tonight it will freeze, and the fuel will be at ${frost} by morning.`,
      ],
      first: {
        form: "choice",
        ask: text`Will she get her fuel in the morning?`,
        choices: [
          {
            label: text`Yes: it was well under ${limit} today, and the elements are new`,
            right: both,
            answer: text`New elements do not help against thick fuel. Everything that is medium costs more in the same measure as the fuel thickens: by morning the vacuum is ${of(cold.vacuum.middle, "vacuum")}.`,
          },
          {
            label: text`No: she runs today and starves in the morning`,
            right: warmOnly,
            answer: text`The finer element had eaten the room that the cold needed: ${of(cold.vacuum.middle, "vacuum")} against ${limit}. Her own would stand at ${of(ownCold.vacuum.middle, "vacuum")}.`,
          },
          {
            label: text`No: she is starving already`,
            right: !gets(warm.verdict),
            answer: text`Not today: the fuel comes. But clean elements are already over what the manual allows for clean ones, so there is no room for soil. That was the warning.`,
          },
        ],
      },
      shows: {
        caption: text`Let it get colder, and find where the descent goes under the limit.`,
        control: {
          by: "range",
          label: "Temperature of the fuel",
          kind: "temperature",
          reads: "temperature",
          min: 258.15,
          max: 308.15,
          start: FROST,
          cold: true,
        },
        system: at,
        figure: (temperature) => ({ draws: "path", system: at(temperature) }),
        reads: (temperature) => [
          { label: "drop of the prefilters", words: [of(dropOf(at(temperature), "prefilter A"), "pressure")] },
          { label: "vacuum at the pump", words: [of(pointOf(at(temperature)).vacuum.middle, "vacuum")] },
          { label: "limit at change", words: [limit] },
          { label: "says the calculation", words: verdictText(at(temperature)) },
        ],
      },
      explanation: [
        text`A finer element fits the thread and not the machine. It costs more on every day of the year, but on a warm one the pump does not mind. Cold multiplies the drop, and what is multiplied is what was fitted.`,
        text`A reading over the clean limit with new elements is the sign to act on, in good weather. It says that soil or frost, whichever comes first, will starve her.`,
        text`Finer than the manual asks is no reason to change: the maker chose the element for the pump it protects and for the flow it has to pass.`,
      ],
      working: [
        text`vacuum = climb − head in the tank + hoses + prefilters`,
        text`at ${frost} the prefilters alone take ${of(dropOf(at(FROST), "prefilter A"), "vacuum")} of ${of(cold.vacuum.middle, "vacuum")}`,
      ],
      explains: ["vacuum", "drop of prefilter A"],
      second: {
        form: "choice",
        ask: text`The owner wants to keep the fine medium. Which of these gives Heron room again at ${frost}?`,
        choices: [
          {
            label: text`Hoses ${of(WIDER - 1, "ratio")} wider`,
            right: mends(hoses),
            answer: text`The hoses were generous already. Wider ones bring the vacuum to ${reads(hoses)}: it is the element that costs. Look for the tall step first.`,
          },
          {
            label: text`A lift pump ${of(STRONGER - 1, "ratio")} stronger`,
            right: mends(pump),
            answer: text`A stronger pump pulls no more fuel than the engine asks for, and its inlet sees the same ${reads(pump)}. The limit is there to protect the pump.`,
          },
          {
            label: text`The same medium in a body with ${of(LARGER, "plain")} times the area`,
            right: mends(body),
            answer: text`Spread over ${of(LARGER, "plain")} times the area the same medium costs a quarter, and the vacuum is ${reads(body)}. If it fits, and if the manual lets it.`,
          },
          {
            label: text`Running the fine elements in for a week`,
            right: false,
            answer: text`Elements do not run in. Everything they catch makes them tighter.`,
          },
        ],
      },
      safety: [
        text`Fit what the operator's manual names, or ask the maker. An estimate is never the reason to go finer or coarser against the maker's word.`,
      ],
    };
  },
};

function withHoses(system: System): System {
  const { spreads: _, ...rest } = mapParts(system, (part) =>
    part.part === "line" || part.part === "fitting" ? { ...part, bore: part.bore * WIDER } : part,
  );
  return rest;
}

function withPump(system: System): System {
  const { pump } = system;
  return pump.kind === "fixed" ? { ...system, pump: { ...pump, flow: pump.flow * STRONGER } } : system;
}

/** The same medium spread over a larger area: the flow test falls as the area grows. */
function withBody(system: System): System {
  return withFilters(system, ELEMENTS, (filter) => costing(filter, 1 / LARGER));
}
