import { cardChoice } from "@thirstline/study/working";
import { cardAnswers } from "../commands/cardAnswers.js";
import { choiceSubjects } from "./choiceSubjects.js";
import type { Open } from "./Opened.js";

/** Figures of `card`. */
export const openCard: Open = async (request, io, out, err) => {
  const answers = await cardAnswers(request, io, out, err);
  const [one] = answers?.answered ?? [];
  if (answers === null || one === undefined) return null;
  const { query, asked } = answers;
  const choice = () => cardChoice(one.system, one.answer, asked);
  const aboutOf = (of: string) => ABOUT[of] ?? null;
  return { query, file: one.file, title: one.system.name, subjects: () => choiceSubjects(choice(), { aboutOf }) };
};

const ABOUT: Readonly<Record<string, string>> = {
  fitted: "with the elements changed",
  "lowest load": "the same at the least load of the duty",
  duplex: "the same with one side of a bank shut",
};
