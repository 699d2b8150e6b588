import type { SizeAnswer } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { exit, worst } from "../exit.js";
import { painter } from "../io/paint.js";
import { sizeJson } from "../json/sizeJson.js";
import { closingLines } from "../text/closingLines.js";
import { sizeText } from "../text/sizeText.js";
import type { Answered } from "./Answered.js";
import { choosing } from "./choosing.js";
import { sizeAnswers } from "./sizeAnswers.js";

/** `thirstline size`: how many, which, how arranged? */
export const runSize: Run = async (request, io, out, err) => {
  const asked = await choosing(request, ["from"], io, out, err);
  if (asked === null) return exit.fault;
  const { query, choice } = asked;
  const answers = await sizeAnswers(request, asked, io, out, err);
  if (answers === null) return exit.fault;
  const { answered } = answers;
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const look = { units: query.units, paint: painter(io), rows: choice.rows };
    const blocks = answered.map((one) => sizeText(one, look));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  const codes = answered.map(({ answer }) => (answer.verdict === "cannot say" ? exit.cannotSay : exit.yes));
  return worst([...codes, ...(answers.faulty ? [exit.fault] : [])]);
};

function jsonOf({ file, answer, fileCautions }: Answered<SizeAnswer>) {
  return { file, ...sizeJson(answer), fileCautions };
}
