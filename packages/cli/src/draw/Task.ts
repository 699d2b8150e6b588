import type { System } from "@thirstline/spec/system";
import {
  type CheckOptions,
  type CurveDrawOptions,
  checkDraws,
  curveDraws,
  lifeDraws,
  type Slice,
} from "@thirstline/study";

/** What is drawn of a system; as plain data, so that it can be handed to a thread. */
export type Task =
  | { readonly question: "life"; readonly system: System }
  /** several systems, each with so many draws, one after another */
  | { readonly question: "lives"; readonly systems: readonly System[]; readonly each: number }
  | { readonly question: "check"; readonly system: System; readonly options: CheckOptions }
  | { readonly question: "curve"; readonly system: System; readonly options: CurveDrawOptions };

/** The figures of a slice of draws, one draw after another. */
export function drawTask(task: Task, slice: Slice): Float64Array {
  switch (task.question) {
    case "life":
      return lifeDraws(task.system, slice);
    case "lives":
      return livesOf(task, slice);
    case "check":
      return checkDraws(task.system, task.options, slice);
    case "curve":
      return curveDraws(task.system, task.options, slice);
  }
}

function livesOf({ systems, each }: Extract<Task, { question: "lives" }>, { from, to, seed }: Slice): Float64Array {
  const lives = new Float64Array(to - from);
  for (let at = from; at < to; ) {
    const system = systems[Math.floor(at / each)] as System;
    const first = at % each;
    const count = Math.min(each - first, to - at);
    lives.set(lifeDraws(system, { from: first, to: first + count, seed }), at - from);
    at += count;
  }
  return lives;
}
