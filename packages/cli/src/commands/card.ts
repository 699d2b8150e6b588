import { type CardAnswer, cardHtml } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { cardExit, exit, worst } from "../exit.js";
import { painter } from "../io/paint.js";
import { cardJson } from "../json/cardJson.js";
import { cardText } from "../text/cardText.js";
import type { Answered } from "./Answered.js";
import { cardAnswers } from "./cardAnswers.js";

/** `thirstline card`: what do I do at the bench? */
export const runCard: Run = async (request, io, out, err) => {
  const answers = await cardAnswers(request, io, out, err);
  if (answers === null) return exit.fault;
  const { answered } = answers;
  if (request.given.has("html")) await out.write(answered.map(({ answer }) => cardHtml(answer)).join(""));
  else if (answers.query.form === "json") {
    await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  } else {
    await out.write(answered.map((one) => `${cardText(one, painter(io)).join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => cardExit[answer.verdict]), ...(answers.faulty ? [exit.fault] : [])]);
};

function jsonOf({ file, answer, fileCautions }: Answered<CardAnswer>) {
  return { file, ...cardJson(answer), fileCautions };
}
