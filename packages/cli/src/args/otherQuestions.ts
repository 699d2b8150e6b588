/** Questions whose figures `why` is asked for with `--of`, and with that question's own options. */
export const otherQuestions = ["gauge", "swap", "size", "remedy", "card", "fleet"] as const;

/** One of them. */
export type OtherQuestion = (typeof otherQuestions)[number];
