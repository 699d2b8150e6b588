import { isGround, type RemedyAnswer, remedy } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { exit, worst } from "../exit.js";
import { painter } from "../io/paint.js";
import { remedyJson } from "../json/remedyJson.js";
import { closingLines } from "../text/closingLines.js";
import { remedyText } from "../text/remedyText.js";
import type { Answered } from "./Answered.js";
import { answerAll } from "./answerAll.js";
import { choosing } from "./choosing.js";
import { remedyOptions } from "./remedyOptions.js";

/** `thirstline remedy`: what would help most? */
export const runRemedy: Run = async (request, io, out, err) => {
  const asked = await choosing(request, [], io, out, err);
  if (asked === null) return exit.fault;
  const { query } = asked;
  const answers = await answerAll(request, io, out, err, (system) => remedy(system, remedyOptions(asked)));
  if (answers === null) return exit.fault;
  const { answered, faulty } = answers;
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const blocks = answered.map((one) => remedyText(one, query.units, painter(io)));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => codeOf(answer)), ...(faulty ? [exit.fault] : [])]);
};

function jsonOf({ file, answer, fileCautions }: Answered<RemedyAnswer>) {
  return { file, ...remedyJson(answer), fileCautions };
}

/** Where wax or missing data take the ground from under every figure, no ranking of changes is an answer. */
function codeOf({ worst: point }: RemedyAnswer) {
  return point.reasons.some((reason) => isGround(reason) && reason.code !== "shut") ? exit.cannotSay : exit.yes;
}
