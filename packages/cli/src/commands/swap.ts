import { fitElement, type SwapAnswer, type SwapGiven, swap } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { drawLives } from "../draw/drawLives.js";
import { exit, swapExit, worst } from "../exit.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { painter } from "../io/paint.js";
import { swapJson } from "../json/swapJson.js";
import { closingLines } from "../text/closingLines.js";
import { swapText } from "../text/swapText.js";
import type { Answered } from "./Answered.js";
import { answerAll } from "./answerAll.js";
import { type Choosing, choosing } from "./choosing.js";
import { swapOptions } from "./swapOptions.js";

/** `thirstline swap`: may I fit that one instead? */
export const runSwap: Run = async (request, io, out, err) => {
  const asked = await choosing(request, ["at", "with"], io, out, err);
  if (asked === null || asked.other === null) return exit.fault;
  const { query } = asked;
  const given = { at: asked.choice.at, with: asked.other };
  const answers = await answerAll(request, io, out, err, (system) =>
    swap(system, given, swapOptions(system, asked, null)),
  );
  if (answers === null) return exit.fault;
  const answered: Answered<SwapAnswer>[] = [];
  for (const one of answers.answered) answered.push(await withLives(one, given, asked, io, err));
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const blocks = answered.map((one) => swapText(one, query.units, painter(io)));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => swapExit[answer.verdict]), ...(answers.faulty ? [exit.fault] : [])]);
};

/** The answer with its lives drawn, of both sides at once. */
async function withLives(
  one: Answered<SwapAnswer>,
  given: SwapGiven,
  asked: Choosing,
  io: Io,
  err: Output,
): Promise<Answered<SwapAnswer>> {
  const { system, answer } = one;
  if (asked.query.draws === 0 || !(answer.now.lifeKnown || answer.changed.lifeKnown)) return one;
  const both = [system, fitElement(system, answer.at, given.with)];
  const [now, changed] = await drawLives(both, asked.query, system.name, io, err);
  if (!now || !changed) return one;
  return { ...one, answer: swap(system, given, swapOptions(system, asked, { now, changed })) };
}

function jsonOf({ file, answer, fileCautions }: Answered<SwapAnswer>) {
  return { file, ...swapJson(answer), fileCautions };
}
