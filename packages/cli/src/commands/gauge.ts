import type { GaugeAnswer } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { exit, gaugeExit, worst } from "../exit.js";
import { painter } from "../io/paint.js";
import { gaugeJson } from "../json/gaugeJson.js";
import { closingLines } from "../text/closingLines.js";
import { gaugeText } from "../text/gaugeText.js";
import type { Answered } from "./Answered.js";
import { gaugeAnswers } from "./gaugeAnswers.js";

/** `thirstline gauge`: what does the gauge say? */
export const runGauge: Run = async (request, io, out, err) => {
  const answers = await gaugeAnswers(request, io, out, err);
  if (answers === null) return exit.fault;
  const { answered, query } = answers;
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const blocks = answered.map((one) => gaugeText(one, query.units, painter(io)));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst(answered.map(({ answer }) => gaugeExit[answer.verdict]));
};

function jsonOf({ file, answer, fileCautions }: Answered<GaugeAnswer>) {
  return { file, ...gaugeJson(answer), fileCautions };
}
