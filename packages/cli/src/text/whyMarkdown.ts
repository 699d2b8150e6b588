import { formulaTex, letterTex, type Step, stepsBefore, type Working } from "@thirstline/study/working";
import { originText } from "./originText.js";
import { bothTexts } from "./siText.js";
import type { WhyLook } from "./whyText.js";

/** A working as Markdown: each formula between dollar signs for a typesetter, what was put in as a table. */
export function whyMarkdown({ figure, system, step }: Working, look: WhyLook): string[] {
  return [`# ${figure}: ${system}`, "", ...section(step, look, 1)];
}

function section(step: Step, look: WhyLook, level: number): string[] {
  const head = level === 1 ? [] : [`${"#".repeat(Math.min(6, level))} ${step.name}`, ""];
  const below =
    level >= look.depth
      ? []
      : stepsBefore(step).filter(({ origin }) => origin.by === "formula" || origin.by === "search");
  return [...head, ...bodyOf(step, look), ...below.flatMap((one) => section(one, look, level + 1))];
}

function bodyOf(step: Step, { units }: WhyLook): string[] {
  const { origin } = step;
  const result = `**${step.name} = ${bothTexts(step, units)}**`;
  if (origin.by === "formula") {
    const { formula, inputs } = origin;
    const rows = inputs.flatMap(({ letter, steps, list }) =>
      steps.map((one, at) => {
        const shown = list ? `${letter}_${at + 1}` : letter;
        return `| $${letterTex(shown)}$ | ${one.name} | ${bothTexts(one, units)} | ${originText(one)} |`;
      }),
    );
    return [
      formula.name,
      "",
      `$$${formulaTex(formula)}$$`,
      "",
      "| letter | meaning | value | from |",
      "|---|---|---|---|",
      ...rows,
      "",
      result,
      "",
      `Holds for: ${formula.holds}. Accuracy: ${formula.accuracy}. Source: ${formula.source}.`,
      "",
    ];
  }
  if (origin.by === "search") {
    const sides = origin.checks.map(
      ({ words, left, relation, right }) =>
        `- ${words}: ${left.name} ${bothTexts(left, units)} ${relation} ${right.name} ${bothTexts(right, units)}`,
    );
    return [result, "", `Found by a search: ${origin.words}.`, "", ...sides, ""];
  }
  return [result, "", `${originText(step)}.`, ""];
}
