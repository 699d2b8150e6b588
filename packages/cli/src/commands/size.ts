import type { System } from "@thirstline/spec/system";
import {
  type Arrangement,
  arrangedSystem,
  nextToDraw,
  type SizeAnswer,
  type SizeOptions,
  sizeSteps,
  spreadOf,
  withChances,
} from "@thirstline/study";
import type { Request } from "../args/Request.js";
import type { Run } from "../args/Run.js";
import { drawLives } from "../draw/drawLives.js";
import { exit, worst } from "../exit.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { painter } from "../io/paint.js";
import { sizeJson } from "../json/sizeJson.js";
import { closingLines } from "../text/closingLines.js";
import { sizeText } from "../text/sizeText.js";
import type { Answered } from "./Answered.js";
import { answerAll } from "./answerAll.js";
import { type Choosing, choosing } from "./choosing.js";

/** `thirstline size`: how many, which, how arranged? */
export const runSize: Run = async (request, io, out, err) => {
  const asked = await choosing(request, ["from"], io, out, err);
  if (asked === null) return exit.fault;
  const { query, choice } = asked;
  const answers = await answerAll(request, io, out, err, (system) => searched(system, asked, io));
  if (answers === null) return exit.fault;
  const answered: Answered<SizeAnswer>[] = [];
  for (const one of answers.answered) answered.push(await drawn(one, request, asked, io, err));
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const look = { units: query.units, paint: painter(io), rows: choice.rows };
    const blocks = answered.map((one) => sizeText(one, look));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  const codes = answered.map(({ answer }) => (answer.verdict === "cannot say" ? exit.cannotSay : exit.yes));
  return worst([...codes, ...(answers.faulty ? [exit.fault] : [])]);
};

/** The search, with how far it is on a terminal. */
function searched(system: System, { catalogue, choice, query }: Choosing, io: Io): SizeAnswer {
  const { side, parallel, stages, bores, interval, code, rating, labour, rows } = choice;
  const options: SizeOptions = {
    ...(side === null ? {} : { side }),
    ...(parallel === null ? {} : { parallel }),
    ...(stages === null ? {} : { stages }),
    bores,
    ...(query.temperatures.length === 0 ? {} : { temperatures: query.temperatures }),
    ...(interval === null ? {} : { interval }),
    ...(code === null ? {} : { code }),
    ...(rating === null ? {} : { rating }),
    ...(labour === null ? {} : { labourRate: labour }),
    keep: Math.max(20, rows),
  };
  const steps = sizeSteps(system, catalogue, options);
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

function jsonOf({ file, answer, fileCautions }: Answered<SizeAnswer>) {
  return { file, ...sizeJson(answer), fileCautions };
}
