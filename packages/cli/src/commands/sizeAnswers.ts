import type { System } from "@thirstline/spec/system";
import {
  type Arrangement,
  arrangedSystem,
  nextToDraw,
  type SizeAnswer,
  sizeSteps,
  spreadOf,
  withChances,
} from "@thirstline/study";
import type { Request } from "../args/Request.js";
import { drawLives } from "../draw/drawLives.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import type { Answered } from "./Answered.js";
import { type Answers, answerAll } from "./answerAll.js";
import type { Choosing } from "./choosing.js";
import { sizeOptions } from "./sizeOptions.js";

/** The answer to `size` for every file, with lives drawn where that was asked for; null when nothing is left to show. */
export async function sizeAnswers(
  request: Request,
  asked: Choosing,
  io: Io,
  out: Output,
  err: Output,
): Promise<Answers<SizeAnswer> | null> {
  const answers = await answerAll(request, io, out, err, (system) => searched(system, asked, io));
  if (answers === null) return null;
  const answered: Answered<SizeAnswer>[] = [];
  for (const one of answers.answered) answered.push(await drawn(one, request, asked, io, err));
  return { ...answers, answered };
}

/** The search, with how far it is on a terminal. */
function searched(system: System, asked: Choosing, io: Io): SizeAnswer {
  const steps = sizeSteps(system, asked.catalogue, sizeOptions(asked));
  const progress = io.errorIsTerminal === true;
  let shown = -1;
  for (;;) {
    const step = steps.next();
    if (step.done) {
      if (shown >= 0) io.stderr.write("\r\u001b[K");
      return step.value;
    }
    const percent = Math.floor((100 * step.value.done) / step.value.of);
    if (!progress || percent === shown) continue;
    shown = percent;
    io.stderr.write(`\r${percent} % of ${step.value.of} arrangements`);
  }
}

/** The answer with lives drawn of those that matter, where draws or a stoppage were asked for. */
async function drawn(
  one: Answered<SizeAnswer>,
  { given }: Request,
  { query, choice, catalogue }: Choosing,
  io: Io,
  err: Output,
): Promise<Answered<SizeAnswer>> {
  const { interval } = one.answer.asked;
  if (!(given.has("draws") || given.has("stoppage")) || query.draws === 0 || interval === null) return one;
  let { answer } = one;
  for (;;) {
    const places = nextToDraw(answer, choice.rows);
    if (places.length === 0) return { ...one, answer };
    const systems = places.map((at) =>
      arrangedSystem(one.system, catalogue, answer.side, answer.arrangements[at] as Arrangement),
    );
    const lives = await drawLives(systems, query, answer.system, io, err);
    const spreads = lives.map(
      (own, at) => [places[at] as number, spreadOf(own, { time: interval, atMost: 0 })] as const,
    );
    answer = withChances(answer, new Map(spreads), choice.stoppage);
  }
}
