import { type CheckAnswer, check } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { exit, verdictExit, worst } from "../exit.js";
import { painter } from "../io/paint.js";
import { checkJson } from "../json/checkJson.js";
import { checkText } from "../text/checkText.js";
import { closingLines } from "../text/closingLines.js";
import type { Answered } from "./Answered.js";
import { answerAll } from "./answerAll.js";

/** `thirstline check`: does it hold? */
export const runCheck: Run = async (request, io, out, err) => {
  const answers = await answerAll(request, io, out, err, (system, { temperatures, demand }) =>
    check(system, {
      ...(temperatures.length === 0 ? {} : { temperatures }),
      ...(demand === null ? {} : { demand }),
    }),
  );
  if (answers === null) return exit.fault;
  const { query, answered, faulty } = answers;
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const blocks = answered.map((one) => checkText(one, query.units, painter(io)));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => verdictExit[answer.verdict]), ...(faulty ? [exit.fault] : [])]);
};

function jsonOf({ file, answer, fileCautions }: Answered<CheckAnswer>) {
  return { file, ...checkJson(answer), fileCautions };
}
