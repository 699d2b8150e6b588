import type { FileData } from "../schema/file.js";
import { placedParts } from "../schema/parts/placedParts.js";
import type { Caution } from "./Fault.js";
import { pathText } from "./placing.js";

/** What a file leaves open, and what is taken for it. */
export function cautionsOf(data: FileData): Caution[] {
  const cautions: Caution[] = [];
  const add = (code: string, path: string, message: string) => cautions.push({ code, path, message });
  if (data.place === undefined) add("no altitude", "place", "no altitude is stated; sea level is taken");
  if (data.demand.return === undefined) add("no return", "demand.return", "no return is stated; none is counted");
  if ((data.fuel.kind === "petrol" || data.fuel.kind === "premix") && data.fuel.ethanol === undefined) {
    add("no ethanol", "fuel.ethanol", "no ethanol share is stated; none is taken");
  }
  if (data.fuel.kind === "biodiesel" && data.fuel.feedstock === undefined) {
    add("no feedstock", "fuel.feedstock", "no feedstock is stated; soy is taken");
  }
  if (data.service?.distance !== undefined && data.duty?.distance === undefined) {
    add("no distance a year", "duty.distance", "no distance a year is stated; the service distance cannot be counted");
  }
  for (const { part, at } of placedParts(data)) {
    if (part.filter?.betas?.length !== 1) continue;
    const which = part.filter.name === undefined ? "this filter" : `"${part.filter.name}"`;
    add(
      "one beta",
      pathText([...at, "filter", "betas"]),
      `one beta ratio only of ${which}; the rest of its curve is a guess`,
    );
  }
  return cautions;
}
