import { plain, remediesWords, remedy, remedyNamed } from "@thirstline/study";
import { remedyChoice } from "@thirstline/study/working";
import { answerAll } from "../commands/answerAll.js";
import { choosing } from "../commands/choosing.js";
import { remedyOptions } from "../commands/remedyOptions.js";
import { choiceSubjects } from "./choiceSubjects.js";
import type { Open } from "./Opened.js";

/** Figures of `remedy`. */
export const openRemedy: Open = async (request, io, out, err) => {
  const asked = await choosing(request, [], io, out, err);
  if (asked === null) return null;
  const options = remedyOptions(asked);
  const answers = await answerAll(request, io, out, err, (system) => remedy(system, options));
  const [one] = answers?.answered ?? [];
  if (answers === null || one === undefined) return null;
  const { query } = answers;
  const aboutOf = (of: string): string => {
    const result = remedyNamed(one.answer, of);
    return result ? plain(remediesWords(result.changes, query.units)) : "as it is";
  };
  const choice = () => remedyChoice(one.system, one.answer, options);
  return { query, file: one.file, title: one.system.name, subjects: () => choiceSubjects(choice(), { aboutOf }) };
};
