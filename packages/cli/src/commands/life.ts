import { isUncertain, type LifeAnswer, life, spreadOf } from "@thirstline/study";
import type { Query } from "../args/Query.js";
import type { Run } from "../args/Run.js";
import { drawShown } from "../draw/drawShown.js";
import { exit, lifeExit, worst } from "../exit.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { painter } from "../io/paint.js";
import { lifeJson } from "../json/lifeJson.js";
import { closingLines } from "../text/closingLines.js";
import { lifeText } from "../text/lifeText.js";
import type { Answered } from "./Answered.js";
import { answerAll } from "./answerAll.js";

/** `thirstline life`: how long do the elements last? */
export const runLife: Run = async (request, io, out, err) => {
  const answers = await answerAll(request, io, out, err, (system) => life(system));
  if (answers === null) return exit.fault;
  const { query, faulty } = answers;
  const answered: Answered<LifeAnswer>[] = [];
  for (const one of answers.answered) answered.push(await withSpread(one, query, io, err));
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const blocks = answered.map((one) => lifeText(one, query.units, painter(io)));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => lifeExit[answer.verdict]), ...(faulty ? [exit.fault] : [])]);
};

/** The spread of a life, where anything is uncertain and soil has a say in it. */
async function withSpread(one: Answered<LifeAnswer>, query: Query, io: Io, err: Output): Promise<Answered<LifeAnswer>> {
  const { system, answer } = one;
  if (query.draws === 0 || answer.elements.length === 0 || !isUncertain(system)) return one;
  const lives = await drawShown({ question: "life", system }, query, io, err);
  return { ...one, answer: { ...answer, spread: spreadOf(lives, answer.interval) } };
}

function jsonOf({ file, answer, fileCautions }: Answered<LifeAnswer>) {
  return { file, ...lifeJson(answer), fileCautions };
}
