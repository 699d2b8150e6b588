import { fleet } from "@thirstline/study";
import type { Asked, Told } from "../messages.js";
import { readYard } from "./readYard.js";

/** What is due in a yard. */
export function workFleet({ files, on, within }: Extract<Asked, { kind: "fleet" }>): Told {
  const { machines, log, shelf, faults } = readYard(files);
  return { kind: "fleet", answer: fleet(machines, log.entries, { on, within, shelf }), faults };
}
