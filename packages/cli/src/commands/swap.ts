import type { CatalogueElement, System } from "@thirstline/spec/system";
import { asFitted, fittedFrom, type SwapAnswer, swap } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { exit, swapExit, worst } from "../exit.js";
import { painter } from "../io/paint.js";
import { swapJson } from "../json/swapJson.js";
import { closingLines } from "../text/closingLines.js";
import { swapText } from "../text/swapText.js";
import type { Answered } from "./Answered.js";
import { answerAll } from "./answerAll.js";
import { choosing } from "./choosing.js";

/** `thirstline swap`: may I fit that one instead? */
export const runSwap: Run = async (request, io, out, err) => {
  const asked = await choosing(request, ["at", "with"], io, out, err);
  if (asked === null || asked.other === null) return exit.fault;
  const { choice, catalogue, query } = asked;
  const other = asked.other;
  const answers = await answerAll(request, io, out, err, (system) =>
    swap(
      system,
      { at: choice.at, with: other },
      {
        fitted: asked.fitted ?? fittedIn(system, choice.at, catalogue),
        draws: query.draws,
        seed: query.seed,
        ...(query.temperatures.length === 0 ? {} : { temperatures: query.temperatures }),
        ...(choice.rating === null ? {} : { rating: choice.rating }),
        ...(choice.labour === null ? {} : { labourRate: choice.labour }),
        ...(choice.stoppage === null ? {} : { stoppage: choice.stoppage }),
      },
    ),
  );
  if (answers === null) return exit.fault;
  const { answered, faulty } = answers;
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const blocks = answered.map((one) => swapText(one, query.units, painter(io)));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  return worst([...answered.map(({ answer }) => swapExit[answer.verdict]), ...(faulty ? [exit.fault] : [])]);
};

/** What the catalogue calls the element that is fitted, going by its figures. */
function fittedIn(system: System, at: readonly string[], catalogue: readonly CatalogueElement[]) {
  const [first] = at;
  return first === undefined ? null : fittedFrom(asFitted(system, first).filter, catalogue);
}

function jsonOf({ file, answer, fileCautions }: Answered<SwapAnswer>) {
  return { file, ...swapJson(answer), fileCautions };
}
