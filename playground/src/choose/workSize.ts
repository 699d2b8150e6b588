import type { System } from "@thirstline/spec/system";
import {
  type Arrangement,
  type ArrangementFigures,
  arrangedSystem,
  arrangementFigures,
  nextToDraw,
  type SizeAnswer,
  sizeSteps,
  spreadOf,
  withChances,
} from "@thirstline/study";
import type { Progress } from "../aside/asideMessages.js";
import { drawLives } from "./drawLives.js";
import { keyOf } from "./keyOf.js";
import type { Asked, Told } from "./messages.js";

/** The answer to a search as soon as it is found, with what check and life say of what it lists, and again when drawn. */
export function workSize(asked: Extract<Asked, { kind: "size" }>, tell: (told: Told | Progress) => void): void {
  const { system, elements, stoppage, draws, few } = asked;
  let answer = searched(asked, tell);
  const systemOf = (one: Arrangement): System => arrangedSystem(system, elements, answer.side, one);
  const figures = new Map<string, ArrangementFigures>();
  const { temperatures, arrangements } = answer;
  arrangements.forEach((one, at) => {
    figures.set(keyOf(one), arrangementFigures(systemOf(one), temperatures));
    if (at % 5 === 4)
      tell({ kind: "progress", words: "Working out what was found", done: at + 1, of: arrangements.length });
  });
  const { interval } = answer.asked;
  const drawn = draws > 0 && interval !== null && arrangements.length > 0;
  tell({ kind: "size", answer, figures, done: !drawn });
  if (!drawn) return;
  for (let places = nextToDraw(answer, few); places.length > 0; places = nextToDraw(answer, few)) {
    const systems = places.map((at) => systemOf(answer.arrangements[at] as Arrangement));
    const lives = drawLives(systems, draws, (done, of) =>
      tell({ kind: "progress", words: "Drawing the chance of starving", done, of }),
    );
    const spreads = lives.map(
      (own, at) => [places[at] as number, spreadOf(own, { time: interval, atMost: 0 })] as const,
    );
    answer = withChances(answer, new Map(spreads), stoppage);
  }
  tell({ kind: "size", answer, figures, done: true });
}

function searched(
  { system, elements, options }: Extract<Asked, { kind: "size" }>,
  tell: (told: Told | Progress) => void,
): SizeAnswer {
  const steps = sizeSteps(system, elements, options);
  let told = 0;
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    // A search takes seconds at most: now and then is often enough.
    if (performance.now() - told < 50) continue;
    told = performance.now();
    tell({ kind: "progress", words: "Going through the arrangements", ...step.value });
  }
}
