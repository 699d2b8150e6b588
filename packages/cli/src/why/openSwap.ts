import { asFitted } from "@thirstline/study";
import { swapChoice } from "@thirstline/study/working";
import { answerAll } from "../commands/answerAll.js";
import { choosing } from "../commands/choosing.js";
import { swapOptions } from "../commands/swapOptions.js";
import { choiceSubjects } from "./choiceSubjects.js";
import type { Open } from "./Opened.js";

/** Figures of `swap`. */
export const openSwap: Open = async (request, io, out, err) => {
  const asked = await choosing(request, ["at", "with"], io, out, err);
  if (asked === null || asked.other === null) return null;
  const given = { at: asked.choice.at, with: asked.other };
  const answers = await answerAll(request, io, out, err, (system, { draws, seed }) => {
    // It refuses a place that is no filter.
    for (const name of given.at) asFitted(system, name);
    return swapChoice(system, given, { ...swapOptions(system, asked, null), draws, seed });
  });
  const [one] = answers?.answered ?? [];
  if (answers === null || one === undefined) return null;
  const abouts: Readonly<Record<string, string>> = { now: "as it is", changed: `with ${given.with.name}` };
  const { query } = answers;
  const look = { aboutOf: (of: string) => abouts[of] ?? null, temperatures: query.temperatures };
  return { query, file: one.file, title: one.system.name, subjects: () => choiceSubjects(one.answer, look) };
};
