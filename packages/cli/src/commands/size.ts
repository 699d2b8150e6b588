import type { System } from "@thirstline/spec/system";
import { type SizeAnswer, type SizeOptions, sizeSteps } from "@thirstline/study";
import type { Run } from "../args/Run.js";
import { exit, worst } from "../exit.js";
import type { Io } from "../io/Io.js";
import { painter } from "../io/paint.js";
import { sizeJson } from "../json/sizeJson.js";
import { closingLines } from "../text/closingLines.js";
import { sizeText } from "../text/sizeText.js";
import type { Answered } from "./Answered.js";
import { answerAll } from "./answerAll.js";
import { type Choosing, choosing } from "./choosing.js";

/** `thirstline size`: how many, which, how arranged? */
export const runSize: Run = async (request, io, out, err) => {
  const asked = await choosing(request, ["from"], io, out, err);
  if (asked === null) return exit.fault;
  const { query, choice } = asked;
  const answers = await answerAll(request, io, out, err, (system) => searched(system, asked, io));
  if (answers === null) return exit.fault;
  const { answered, faulty } = answers;
  if (query.form === "json") await out.write(`${JSON.stringify({ answers: answered.map(jsonOf) }, null, 2)}\n`);
  else {
    const look = { units: query.units, paint: painter(io), rows: choice.rows };
    const blocks = answered.map((one) => sizeText(one, look));
    await out.write([...blocks, closingLines()].map((block) => `${block.join("\n")}\n`).join("\n"));
  }
  const codes = answered.map(({ answer }) => (answer.verdict === "cannot say" ? exit.cannotSay : exit.yes));
  return worst([...codes, ...(faulty ? [exit.fault] : [])]);
};

/** The search, with how far it is on a terminal. */
function searched(system: System, { catalogue, choice, query }: Choosing, io: Io): SizeAnswer {
  const { side, parallel, stages, bores, interval, code, rating, labour, rows } = choice;
  const options: SizeOptions = {
    ...(side === null ? {} : { side }),
    ...(parallel === null ? {} : { parallel }),
    ...(stages === null ? {} : { stages }),
    bores,
    ...(query.temperatures.length === 0 ? {} : { temperatures: query.temperatures }),
    ...(interval === null ? {} : { interval }),
    ...(code === null ? {} : { code }),
    ...(rating === null ? {} : { rating }),
    ...(labour === null ? {} : { labourRate: labour }),
    keep: Math.max(20, rows),
  };
  const steps = sizeSteps(system, catalogue, options);
  const progress = io.errorIsTerminal === true;
  let shown = -1;
  for (;;) {
    const step = steps.next();
    if (step.done) {
      if (shown >= 0) io.stderr.write("\r\u001b[K");
      return step.value;
    }
    const percent = Math.floor((100 * step.value.done) / step.value.of);
    if (!progress || percent === shown) continue;
    shown = percent;
    io.stderr.write(`\r${percent} % of ${step.value.of} arrangements`);
  }
}

function jsonOf({ file, answer, fileCautions }: Answered<SizeAnswer>) {
  return { file, ...sizeJson(answer), fileCautions };
}
