import { temperaturesOf } from "../../choose/temperaturesOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import * as formulas from "../formulas/choosing.js";
import type { Step } from "../Step.js";
import { asked, fromFile, fromSource, inWords, worked } from "../worked.js";
import { intervalAsked } from "./arrangementCost.js";
import { effortWords } from "./effortWords.js";
import type { SizeGiven } from "./SizeGiven.js";

const GROUP = "The search";

/** What the search was asked for, how much there was to search, and what it came to. */
export function searchFigures(given: SizeGiven): FigureMaker[] {
  const { answer, file, options } = given;
  const figure = figuresIn(GROUP);
  const { rating } = answer.asked;
  const most = file.service?.atMost ?? file.service?.interval;
  const key = file.service?.atMost === undefined ? "interval" : "at most";
  const effort = (Object.keys(effortWords) as (keyof typeof effortWords)[]).map((key) =>
    figure(effortWords[key], () => counted(effortWords[key], answer.effort[key], "counted in the search")),
  );
  return [
    figure("interval asked", () => intervalAsked(given)),
    figure("longest interval allowed", () =>
      most === undefined
        ? null
        : fromFile(`service.${key}`, { name: "longest interval", value: most, unit: "s", kind: "running time" }),
    ),
    figure("beta asked", () =>
      rating ? asked("rating", { name: "beta asked", value: rating.beta, unit: "1", kind: "plain" }) : null,
    ),
    figure("size asked", () =>
      rating ? asked("rating", { name: "size asked", value: rating.size, unit: "m", kind: "particle size" }) : null,
    ),
    ...answer.temperatures.map((value, at) =>
      figure(`temperature ${at + 1} searched at`, () => temperatureStep(given, value)),
    ),
    ...answer.reasons.flatMap((reason) =>
      reason.code === "fuel not judged"
        ? [figure("temperature not judged", () => temperatureStep(given, reason.temperature))]
        : [],
    ),
    figure("candidates", () => candidates(given)),
    figure("passing", () => passing(given)),
    ...effort,
    ...(options.bores ?? []).map((bore, at) =>
      figure(`bore ${at + 1} tried`, () => asked("bore", { name: "bore tried", value: bore, unit: "m", kind: "bore" })),
    ),
  ];
}

function counted(name: string, value: number, words: string): Step {
  return inWords(words, { name, value, unit: "1", kind: "plain" });
}

/** One of those asked for, or a step between the coldest and the warmest of them. */
function temperatureStep({ file, answer, options }: SizeGiven, value: number): Step {
  const plain = { name: "temperature searched at", value, unit: "K", kind: "temperature" } as const;
  const stated = options.temperatures?.length ? options.temperatures : temperaturesOf(file);
  if (stated.includes(value)) {
    const season = file.duty?.seasons?.findIndex(({ temperature }) => temperature === value) ?? -1;
    if (options.temperatures?.length) return asked("temperature", plain);
    return fromFile(season < 0 ? "fuel.temperature" : `duty.seasons[${season}].temperature`, plain);
  }
  const [coldest, warmest] = [answer.temperatures[0] ?? value, answer.temperatures.at(-1) ?? value];
  const steps = Math.ceil((warmest - coldest) / 5);
  const end = (name: string, own: number) => inWords("of those stated or asked for", { ...plain, name, value: own });
  return worked(
    formulas.evenTemperature,
    {
      T_1: end("coldest", coldest),
      T_2: end("warmest", warmest),
      i: counted("place of the step", Math.round(((value - coldest) / (warmest - coldest)) * steps), "counted"),
      n: counted("how many steps", steps, "so many that none is longer than 5 K"),
    },
    { value },
  );
}

function candidates({ elements, options }: SizeGiven): Step {
  const { parallel = 4, stages = 2, bores = [] } = options;
  const k = Array.from({ length: stages }, (_, at) => counted("how many stages", at + 1, "counted"));
  return worked(formulas.arrangementsCount, {
    b: counted("how many bores", Math.max(1, new Set(bores).size), "counted; the file's own is one"),
    e: counted("elements in the catalogue", elements.length, "counted"),
    p: fromSource("as asked, or four", { name: "most side by side", value: parallel, unit: "1", kind: "plain" }),
    k,
  });
}

/** All but those that fail; none where nothing was searched. */
function passing(given: SizeGiven): Step {
  const { passing: value, failed, verdict } = given.answer;
  if (verdict === "cannot say") return counted("passing", value, "nothing is searched, for the reasons given");
  const f = failed.map(({ count, by }) => counted(`fail by ${by}`, count, "counted by the first thing each fails by"));
  if (f.length === 0) return counted("passing", value, "all of them");
  return worked(formulas.arrangementsLeft, { N: candidates(given), f }, { value });
}
