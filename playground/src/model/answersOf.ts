import type { System } from "@thirstline/spec/system";
import { type CheckAnswer, type CheckPoint, check } from "@thirstline/study";

/** What the sheet shows of one system before anything else is fetched. */
export interface Answers {
  readonly check: CheckAnswer;
  readonly point: CheckPoint;
}

/**
 * The answers for a system at its own temperature and demand.
 *
 * @throws InputError of the core, naming the field, for a system that cannot be
 */
export function answersOf(system: System): Answers {
  const checked = check(system);
  const [point] = checked.points;
  if (point === undefined) throw new Error("no temperature to answer at");
  return { check: checked, point };
}
