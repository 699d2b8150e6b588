import { type CurveAnswer, type CurveSpread, curve, curveSpreadOf, isSuctionUncertain } from "@thirstline/study";
import type { Query } from "../args/Query.js";
import type { Run } from "../args/Run.js";
import { drawShown } from "../draw/drawShown.js";
import { exit, worst } from "../exit.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { painter } from "../io/paint.js";
import { curveJson } from "../json/curveJson.js";
import { closingLines } from "../text/closingLines.js";
import { curveCsv } from "../text/curveCsv.js";
import { curveText } from "../text/curveText.js";
import type { Answered, Spread } from "./Answered.js";
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
  const { query, faulty } = answers;
  const answered: Spread<CurveAnswer, CurveSpread>[] = [];
  for (const one of answers.answered) answered.push(await withSpread(one, query, io, err));
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else if (query.form === "csv") await out.write(curveCsv(answered, query.units));
  else {
    const look = { units: query.units, paint: painter(io), width: Math.min(120, Math.max(60, io.columns ?? 80)) };
    const blocks = answered.map((one) => curveText(one, look));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => codeOf(answer)), ...(faulty ? [exit.fault] : [])]);
};

/** Draws of the file's spreads, where any bear on pressures: data only, since a chart of characters has no room for them. */
async function withSpread(
  one: Answered<CurveAnswer>,
  query: Query,
  io: Io,
  err: Output,
): Promise<Spread<CurveAnswer, CurveSpread>> {
  const { system, answer } = one;
  if (query.form === "text" || query.draws === 0 || !isSuctionUncertain(system)) return one;
  const spreads: CurveSpread[] = [];
  for (const point of answer.points) {
    const points = point.demand.length;
    const options = {
      ...(query.temperatures.length === 0 ? {} : { temperatures: [point.temperature] }),
      ...(query.demand === null ? {} : { demand: query.demand }),
      to: point.demand.at(-1) ?? 0,
      points,
    };
    const draws = await drawShown({ question: "curve", system, options }, query, io, err);
    spreads.push(...curveSpreadOf(draws, 1, points));
  }
  return { ...one, spreads };
}

function jsonOf({ file, answer, fileCautions, spreads }: Spread<CurveAnswer, CurveSpread>) {
  return { file, ...curveJson(answer, spreads), fileCautions };
}

/** A curve that is drawn is an answer; one whose figures are no promise is not. */
function codeOf({ points }: CurveAnswer) {
  return points.some(({ unanswered }) => unanswered.length > 0) ? exit.cannotSay : exit.yes;
}
