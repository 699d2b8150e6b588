import type { System } from "@thirstline/spec/system";
import { type CheckPoint, check, type LifeAnswer, type PartRow } from "@thirstline/study";
import { countText } from "../../life/particles.js";
import { named, type Words } from "../words.js";
import { lifeOf } from "./lifeOf.js";

/** The answer of `check` at the system's own temperature. */
export function pointOf(system: System): CheckPoint {
  const [point] = check(system).points;
  if (point === undefined) throw new Error("check answers at one temperature at least");
  return point;
}

/** A part's row of an answer, by its name. */
export function rowOf({ suction, delivery }: CheckPoint, name: string): PartRow {
  const row = [...suction, ...delivery].find((one) => one.name === name);
  if (row === undefined) throw new Error(`the path has no part called ${name}`);
  return row;
}

/** What a part costs, Pa, with clean elements at the system's own temperature. */
export function dropOf(system: System, name: string): number {
  return rowOf(pointOf(system), name).drop ?? Number.NaN;
}

/** The pressure of the air on the fuel, Pa absolute: behind the tank, and the tank's own drop. */
export function airOf({ suction }: CheckPoint): number {
  const [first] = suction;
  return (first?.pressure ?? Number.NaN) + (first?.drop ?? 0);
}

/** Running time to the first limit, s; NaN where there is none. */
export function timeOf(answer: LifeAnswer): number {
  return answer.end?.time ?? Number.NaN;
}

/** Particles of 4, 6 and 14 um(c) and up in a mL at the last place on the way, one after another. */
export function countsAtEnd(system: System): Words {
  const counts = lifeOf(system).cleanliness.at(-1)?.counts ?? [];
  return [named(counts.map(countText).join(" / "))];
}

/** The code at the last place on the way: what the engine gets. */
export function codeAtEnd(system: System): string {
  return lifeOf(system).cleanliness.at(-1)?.code ?? "none";
}
