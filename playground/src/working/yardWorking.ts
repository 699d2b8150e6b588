import { fleetChoice, fleetWorking, type Leaf, type Working } from "@thirstline/study/working";
import { readYard } from "../field/fleet/readYard.js";
import type { Question } from "./Question.js";

/** How a figure of a yard was reached. Of its machines only the one it belongs to is read and followed. */
export function yardWorking(
  { files, answer }: Extract<Question, { kind: "fleet" }>,
  { of = "yard", ...leaf }: Leaf,
): Working | null {
  const at = of.startsWith("machine ") ? Number(of.slice("machine ".length)) : -1;
  const entry = answer.entries[at];
  const entries = entry ? [entry] : [];
  const { machines, log, shelf } = entry
    ? readYard(files, entry.machine)
    : { machines: [], log: { entries: [] }, shelf: [] };
  const { on, within } = answer;
  const choice = fleetChoice(machines, log.entries, { ...answer, entries }, { on, within, shelf });
  return fleetWorking(choice, { ...leaf, of: entry ? "machine 0" : of });
}
