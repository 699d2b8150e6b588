import type { System } from "@thirstline/spec/system";
import { capital } from "@thirstline/study";
import { named, type Words } from "../words.js";
import { pointOf } from "./answers.js";

/** The verdict on a system in a word or two: "Holds", "Cannot say". */
export function verdictText(system: System): Words {
  return [named(capital(pointOf(system).verdict))];
}
