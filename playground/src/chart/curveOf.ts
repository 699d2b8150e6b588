import type { System } from "@thirstline/spec/system";
import { type CurveAnswer, type CurvePoint, curve } from "@thirstline/study";

/** A system's curve, at its own temperature. */
export interface Curve {
  readonly answer: CurveAnswer;
  readonly point: CurvePoint;
}

/** Curves already worked out, for as long as their systems are in use. */
const known = new WeakMap<System, Curve>();

/** The curve of a system at its own temperature; of the same system only once. */
export function curveOf(system: System): Curve {
  const found = known.get(system);
  if (found !== undefined) return found;
  const answer = curve(system);
  const [point] = answer.points;
  if (point === undefined) throw new Error("no temperature to answer at");
  known.set(system, { answer, point });
  return { answer, point };
}
