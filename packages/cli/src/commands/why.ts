import { nearest } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import type { Asked, FigureListed, Working } from "@thirstline/study/working";
import type { Query } from "../args/Query.js";
import type { Run } from "../args/Run.js";
import { readWhy, type WhyQuery } from "../args/readWhy.js";
import { exit } from "../exit.js";
import { argumentFaults, complain } from "../io/complain.js";
import { painter } from "../io/paint.js";
import { whyJson, whyListJson } from "../json/whyJson.js";
import { whyList } from "../text/whyList.js";
import { whyMarkdown } from "../text/whyMarkdown.js";
import { whyText } from "../text/whyText.js";
import { wrap } from "../text/wrap.js";
import { answerAll } from "./answerAll.js";

/** What is known of the figures of a system at one temperature: all of them, or one with its working. */
interface Found {
  readonly list: readonly FigureListed[];
  /** null where the list is asked for, or the figure has no value; with it there is no need of the list */
  readonly working: Working | null;
}

/** `thirstline why`: why that number? */
export const runWhy: Run = async (request, io, out, err) => {
  const why = readWhy(request);
  if ("faults" in why) return complain(argumentFaults(why.faults), request.given.has("json"), out, err);
  // The evaluator is loaded here and nowhere else: no other command waits for it.
  const { figuresOf, isFigure, workingOf } = await import("@thirstline/study/working");
  const find = (system: System, asked: Asked): Found => {
    const working = why.figure === null ? null : workingOf(system, why.figure, asked);
    return { list: working === null ? figuresOf(system, asked) : [], working };
  };
  const answers = await answerAll({ ...request, files: [why.file] }, io, out, err, (system, query) =>
    askedOf(query).map((asked) => find(system, asked)),
  );
  const [one] = answers?.answered ?? [];
  if (answers === null || one === undefined) return exit.fault;
  const { query } = answers;
  const found = one.answer;
  if (why.figure === null) {
    const [{ list } = { list: [] }] = found;
    const text =
      why.form === "json"
        ? json({ answers: [{ file: one.file, ...whyListJson(one.system, list) }] })
        : lines(whyList(one, list, query.units, painter(io)));
    await out.write(text);
    return exit.yes;
  }
  const figure = why.figure;
  const asked = askedOf(query);
  if (!asked.some((own) => isFigure(one.system, figure, own))) {
    return complain([unknownFigure(one.file, figure, found[0]?.list ?? [])], why.form === "json", out, err);
  }
  const workings = found.flatMap(({ working }) => working ?? []);
  if (workings.length === 0 && why.form !== "json") {
    await out.write(
      lines(
        wrap(`"${figure}" has no value for ${one.system.name} here: nothing flows, or the file does not state it.`),
      ),
    );
    return exit.cannotSay;
  }
  await out.write(shown(workings, { why, query, file: one.file, paint: painter(io) }));
  return workings.length === found.length ? exit.yes : exit.cannotSay;
};

function shown(
  workings: readonly Working[],
  {
    why,
    query,
    file,
    paint,
  }: {
    readonly why: WhyQuery;
    readonly query: Query;
    readonly file: string;
    readonly paint: ReturnType<typeof painter>;
  },
): string {
  const { depth, form } = why;
  if (form === "json") return json({ answers: workings.map((one) => ({ file, ...whyJson(one, depth ?? 100) })) });
  const look = { units: query.units, depth: depth ?? 1, paint };
  const blocks = workings.map((one) => (form === "markdown" ? whyMarkdown(one, look) : whyText(one, look)));
  return blocks.map(lines).join("\n");
}

/** Each temperature asked for is a question of its own. */
function askedOf({ temperatures, demand, draws, seed }: Query): Asked[] {
  const rest = { ...(demand === null ? {} : { demand }), draws, seed };
  return temperatures.length === 0 ? [rest] : temperatures.map((temperature) => ({ ...rest, temperature }));
}

function unknownFigure(file: string, figure: string, list: readonly FigureListed[]) {
  const names = list.map(({ name }) => name);
  const near = nearest(figure, names) ?? names.find((name) => name.includes(figure) || figure.includes(name));
  const hint = near === undefined ? `thirstline why ${file} lists them` : `did you mean "${near}"?`;
  const message = `is not a figure of this system here; ${hint}`;
  return argumentFaults([{ at: `"${figure}"`, code: "unknown figure", message }])[0] as ReturnType<
    typeof argumentFaults
  >[number];
}

function lines(block: readonly string[]): string {
  return `${block.join("\n")}\n`;
}

function json(answer: object): string {
  return `${JSON.stringify(answer, null, 2)}\n`;
}
