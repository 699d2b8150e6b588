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
  | { readonly question: "check"; readonly system: System; readonly options: CheckOptions }
  | { readonly question: "curve"; readonly system: System; readonly options: CurveDrawOptions };

/** The figures of a slice of draws, one draw after another. */
export function drawTask(task: Task, slice: Slice): Float64Array {
  switch (task.question) {
    case "life":
      return lifeDraws(task.system, slice);
    case "check":
      return checkDraws(task.system, task.options, slice);
    case "curve":
      return curveDraws(task.system, task.options, slice);
  }
}
