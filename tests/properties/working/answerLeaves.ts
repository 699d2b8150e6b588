/** A figure of an answer in JSON with the path to it; of a column, with the place in it. */
export interface AnswerLeaf {
  readonly path: readonly (string | number)[];
  readonly value: number;
  readonly unit: string;
}

/** Every figure of an answer that has a value. Columns are read at their ends and every so many places. */
export function answerLeaves(answer: unknown, every: number, path: readonly (string | number)[] = []): AnswerLeaf[] {
  if (typeof answer !== "object" || answer === null) return [];
  if ("value" in answer && "unit" in answer) {
    const { value, unit } = answer as { value: unknown; unit: string };
    if (typeof value === "number") return [{ path, value, unit }];
    if (!Array.isArray(value)) return [];
    return value.flatMap((one: unknown, at) =>
      typeof one === "number" && (at % every === 0 || at === value.length - 1)
        ? [{ path: [...path, at], value: one, unit }]
        : [],
    );
  }
  return Object.entries(answer).flatMap(([key, inner]) =>
    answerLeaves(inner, every, [...path, Array.isArray(answer) ? Number(key) : key]),
  );
}
