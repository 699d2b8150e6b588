import {
  type CheckAnswer,
  type CheckOptions,
  type CheckSpread,
  check,
  checkSpreadOf,
  isSuctionUncertain,
} from "@thirstline/study";
import type { Query } from "../args/Query.js";
import type { Run } from "../args/Run.js";
import { drawShown } from "../draw/drawShown.js";
import { exit, verdictExit, worst } from "../exit.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { painter } from "../io/paint.js";
import { checkJson } from "../json/checkJson.js";
import { checkText } from "../text/checkText.js";
import { closingLines } from "../text/closingLines.js";
import type { Answered, Spread } from "./Answered.js";
import { answerAll } from "./answerAll.js";

/** `thirstline check`: does it hold? */
export const runCheck: Run = async (request, io, out, err) => {
  const answers = await answerAll(request, io, out, err, (system, asked) => check(system, optionsOf(asked)));
  if (answers === null) return exit.fault;
  const { query, faulty } = answers;
  const answered: Spread<CheckAnswer, CheckSpread>[] = [];
  for (const one of answers.answered) answered.push(await withSpread(one, query, io, err));
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const blocks = answered.map((one) => checkText(one, query.units, painter(io)));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => verdictExit[answer.verdict]), ...(faulty ? [exit.fault] : [])]);
};

function optionsOf({ temperatures, demand }: Query): CheckOptions {
  return { ...(temperatures.length === 0 ? {} : { temperatures }), ...(demand === null ? {} : { demand }) };
}

/** Draws of the file's spreads, where any bear on pressures. */
async function withSpread(
  one: Answered<CheckAnswer>,
  query: Query,
  io: Io,
  err: Output,
): Promise<Spread<CheckAnswer, CheckSpread>> {
  const { system, answer } = one;
  if (query.draws === 0 || !isSuctionUncertain(system)) return one;
  const draws = await drawShown({ question: "check", system, options: optionsOf(query) }, query, io, err);
  return { ...one, spreads: checkSpreadOf(draws, answer.points.length) };
}

function jsonOf({ file, answer, fileCautions, spreads }: Spread<CheckAnswer, CheckSpread>) {
  return { file, ...checkJson(answer, spreads), fileCautions };
}
