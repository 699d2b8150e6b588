import type { NumberQuestion, Question } from "./Lesson.js";
import { of, text, type Words } from "./words.js";

/** A committed prediction: SI for a number, the place in the list for a choice. */
export type Prediction = number;

/** What a prediction is answered with. */
export interface Judged {
  readonly right: boolean;
  readonly words: Words;
}

/** The answer to a prediction: what the model says, and what a wrong one missed. */
export function judged(question: Question, prediction: Prediction): Judged {
  if (question.form === "number") return judgedNumber(question, prediction);
  const choice = question.choices[prediction];
  return choice ? { right: choice.right, words: choice.answer } : { right: false, words: [] };
}

/** Whether a figure is within a share of another. */
export function isNear(value: number, right: number, share: number): boolean {
  return Math.abs(value - right) <= share * Math.abs(right);
}

function judgedNumber({ right, near, because, slips, otherwise, kind }: NumberQuestion, prediction: number): Judged {
  const says = text`You say ${of(prediction, kind)}; the calculation says ${of(right, kind)}. `;
  if (isNear(prediction, right, near)) return { right: true, words: text`${says}${because}` };
  const slip = slips
    .filter(({ value }) => isNear(prediction, value, near))
    .sort((one, two) => Math.abs(one.value - prediction) - Math.abs(two.value - prediction))[0];
  return { right: false, words: text`${says}${slip?.misses ?? otherwise} ${because}` };
}
