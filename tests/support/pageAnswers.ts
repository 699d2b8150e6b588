import { readSystem, type System } from "@thirstline/spec";
import { type CheckAnswer, type CheckOptions, type CheckPoint, check } from "@thirstline/study";
import { read } from "./repository.js";

/** A demonstration file as the command line reads it. */
export function demo(file: string): System {
  const found = readSystem(read(`packages/spec/demo/${file}`), { file });
  if ("faults" in found) throw new Error(`${file} has faults`);
  return found.system;
}

/** What `thirstline check` answers for a system, at its own or another temperature. */
export function answerFor(system: System, options: CheckOptions = {}): { answer: CheckAnswer; point: CheckPoint } {
  const answer = check(system, options);
  const [point] = answer.points;
  if (point === undefined) throw new Error("check answers at one temperature at least");
  return { answer, point };
}
