import type { System } from "@thirstline/spec/system";
import { type CheckAnswer, type CheckPoint, type CurveAnswer, type CurvePoint, check, curve } from "@thirstline/study";

/** Everything the sheet shows of one system. */
export interface Answers {
  readonly check: CheckAnswer;
  readonly point: CheckPoint;
  readonly curve: CurveAnswer;
  readonly curvePoint: CurvePoint;
}

/**
 * The answers for a system at its own temperature and demand.
 *
 * @throws InputError of the core, naming the field, for a system that cannot be
 */
export function answersOf(system: System): Answers {
  const checked = check(system);
  const drawn = curve(system);
  const [point] = checked.points;
  const [curvePoint] = drawn.points;
  if (point === undefined || curvePoint === undefined) throw new Error("no temperature to answer at");
  return { check: checked, point, curve: drawn, curvePoint };
}
