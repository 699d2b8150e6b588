import { type CurveAnswer, curve } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { exit, worst } from "../exit.js";
import { painter } from "../io/paint.js";
import { curveJson } from "../json/curveJson.js";
import { closingLines } from "../text/closingLines.js";
import { curveCsv } from "../text/curveCsv.js";
import { curveText } from "../text/curveText.js";
import type { Answered } from "./Answered.js";
import { answerAll } from "./answerAll.js";

/** `thirstline curve`: how does vacuum grow with demand? */
export const runCurve: Run = async (request, io, out, err) => {
  const answers = await answerAll(request, io, out, err, (system, { temperatures, demand, to, points }) =>
    curve(system, {
      ...(temperatures.length === 0 ? {} : { temperatures }),
      ...(demand === null ? {} : { demand }),
      ...(to === null ? {} : { to }),
      ...(points === null ? {} : { points }),
    }),
  );
  if (answers === null) return exit.fault;
  const { query, answered, faulty } = answers;
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else if (query.form === "csv") await out.write(curveCsv(answered, query.units));
  else {
    const look = { units: query.units, paint: painter(io), width: Math.min(120, Math.max(60, io.columns ?? 80)) };
    const blocks = answered.map((one) => curveText(one, look));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => codeOf(answer)), ...(faulty ? [exit.fault] : [])]);
};

function jsonOf({ file, answer, fileCautions }: Answered<CurveAnswer>) {
  return { file, ...curveJson(answer), fileCautions };
}

/** A curve that is drawn is an answer; one whose figures are no promise is not. */
function codeOf({ points }: CurveAnswer) {
  return points.some(({ unanswered }) => unanswered.length > 0) ? exit.cannotSay : exit.yes;
}
