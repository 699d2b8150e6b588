import {
  type Choice,
  cardChoice,
  choiceWorking,
  type GaugeChoice,
  gaugeChoice,
  gaugeWorking,
  type Leaf,
  remedyChoice,
  sizeChoice,
  swapChoice,
  type Working,
  workingOf,
} from "@thirstline/study/working";
import type { Question, Source } from "./Question.js";

type Compared = Exclude<Question, { kind: "fleet" }>;

/** What questions compare, or readings are fitted to, for as long as they are in use: making it takes long. */
const known = new WeakMap<Compared, Choice | GaugeChoice>();

/** How a figure of a system or a question was reached; null for what is no figure, or one without a value. */
export async function sourceWorking(source: Source, leaf: Leaf): Promise<Working | null> {
  if (!("kind" in source)) return workingOf(source, leaf.figure, leaf.asked);
  // A yard's files are read for it, which takes the readers.
  if (source.kind === "fleet") return (await import("./yardWorking.js")).yardWorking(source, leaf);
  const choice = known.get(source) ?? choiceOf(source);
  known.set(source, choice);
  return choice.question === "gauge" ? gaugeWorking(choice, leaf) : choiceWorking(choice, leaf);
}

function choiceOf(asked: Compared): Choice | GaugeChoice {
  switch (asked.kind) {
    case "swap":
      return swapChoice(asked.system, asked.given, asked.options);
    case "size":
      return sizeChoice(asked.system, asked.elements, asked.answer, asked.options);
    case "remedy":
      return remedyChoice(asked.system, asked.answer, asked.options);
    case "card":
      return cardChoice(asked.system, asked.answer, asked.options);
    case "gauge":
      return gaugeChoice(asked.system, asked.readings, asked.answer);
  }
}
