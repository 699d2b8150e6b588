import { quantity, type SizeAnswer, sizeNamed, stagesText } from "@thirstline/study";
import { sizeChoice } from "@thirstline/study/working";
import type { Query } from "../args/Query.js";
import { choosing } from "../commands/choosing.js";
import { sizeAnswers } from "../commands/sizeAnswers.js";
import { sizeOptions } from "../commands/sizeOptions.js";
import { choiceSubjects } from "./choiceSubjects.js";
import type { Open } from "./Opened.js";

/** Figures of `size`. */
export const openSize: Open = async (request, io, out, err) => {
  const asked = await choosing(request, ["from"], io, out, err);
  if (asked === null) return null;
  const answers = await sizeAnswers(request, asked, io, out, err);
  const [one] = answers?.answered ?? [];
  if (answers === null || one === undefined) return null;
  const { query } = answers;
  const { stoppage } = asked.choice;
  const options = {
    ...sizeOptions(asked),
    draws: query.draws,
    seed: query.seed,
    ...(stoppage === null ? {} : { stoppage }),
  };
  const look = {
    aboutOf: (of: string) => aboutOf(of, one.answer, query),
    temperatures: query.temperatures,
    isBare: (of: string) => of === "search" || of.startsWith("failed"),
  };
  const choice = () => sizeChoice(one.system, asked.catalogue, one.answer, options);
  return { query, file: one.file, title: one.system.name, subjects: () => choiceSubjects(choice(), look) };
};

function aboutOf(of: string, answer: SizeAnswer, { units }: Query): string | null {
  const found = sizeNamed(answer, of);
  if (found === null) return null;
  const bore = found.bore === null ? "" : ` with ${quantity(found.bore, "bore", units)} lines`;
  return `${stagesText(found.stages)}${bore}`;
}
