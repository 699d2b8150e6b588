import { gaugeChoice, gaugeWorking } from "@thirstline/study/working";
import { gaugeAnswers } from "../commands/gaugeAnswers.js";
import { memberSubjects } from "./memberSubjects.js";
import type { Open } from "./Opened.js";
import { subjectLabel } from "./subjectLabel.js";

/** Figures of `gauge`. */
export const openGauge: Open = async (request, io, out, err) => {
  const answers = await gaugeAnswers(request, io, out, err);
  const [one] = answers?.answered ?? [];
  if (answers === null || one === undefined) return null;
  const { query, readings, options } = answers;
  const subjects = () => {
    const choice = gaugeChoice(one.system, readings, one.answer, options);
    return memberSubjects(choice.members, (leaf) => gaugeWorking(choice, leaf), { labelOf: subjectLabel, aboutOf });
  };
  // The machine's own name stands over the whole list.
  const aboutOf = (of: string, name: string) => {
    const rest = name.startsWith(`${one.system.name}, `) ? name.slice(one.system.name.length + 2) : name;
    return rest === of ? null : rest;
  };
  return { query, file: one.file, title: one.system.name, subjects };
};
