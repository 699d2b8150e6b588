import type { System } from "@thirstline/spec/system";
import { type Asked, figuresOf, isFigure, workingOf } from "@thirstline/study/working";
import type { Query } from "../args/Query.js";
import { answerAll } from "../commands/answerAll.js";
import type { Open } from "./Opened.js";
import type { Subject } from "./Subject.js";

/** Figures of `check`, `curve` and `life` of one file. */
export const openFile: Open = async (request, io, out, err) => {
  const answers = await answerAll(request, io, out, err, () => null);
  const [one] = answers?.answered ?? [];
  if (answers === null || one === undefined) return null;
  const { query } = answers;
  return { query, file: one.file, title: one.system.name, subjects: () => [machine(one.system, askedOf(query))] };
};

function machine(system: System, asked: readonly Asked[]): Subject {
  const list = () => figuresOf(system, asked[0]);
  return {
    label: "",
    about: null,
    name: system.name,
    own: [],
    general: true,
    brief: list,
    list,
    has: (figure) => asked.some((one) => isFigure(system, figure, one)),
    workings: (figure) => asked.map((one) => workingOf(system, figure, one)),
  };
}

/** Each temperature asked for is a question of its own. */
function askedOf({ temperatures, demand, draws, seed }: Query): Asked[] {
  const rest = { ...(demand === null ? {} : { demand }), draws, seed };
  return temperatures.length === 0 ? [rest] : temperatures.map((temperature) => ({ ...rest, temperature }));
}
