import { fleet } from "@thirstline/study";
import { fleetChoice, fleetWorking } from "@thirstline/study/working";
import { fleetOptions } from "../commands/fleetOptions.js";
import { readFleet } from "../commands/readFleet.js";
import { memberSubjects } from "./memberSubjects.js";
import type { Open } from "./Opened.js";

/** Figures of `fleet`. */
export const openFleet: Open = async (request, io, out, err) => {
  const read = await readFleet(request, io, out, err);
  if (read === null) return null;
  const { query, folder, yard } = read;
  const { entries } = yard.log;
  const options = await fleetOptions(read, request, io, err);
  const answer = fleet(yard.machines, entries, options);
  const choice = fleetChoice(yard.machines, entries, answer, options);
  const subjects = () => memberSubjects(choice.members, (leaf) => fleetWorking(choice, leaf), { labelOf });
  return { query, file: folder, title: folder, subjects, faults: yard.faults };
};

/** A machine and a part go by their names; no two machines share one. */
function labelOf(of: string, name: string): string {
  return of === "yard" ? "yard" : name;
}
