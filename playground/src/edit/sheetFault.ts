import type { System, SystemPart } from "@thirstline/spec/system";
import { partsIn } from "../model/parts.js";

/** Most parts a system file holds, banks counted too. */
const MOST_PARTS = 200;

/** Why a system cannot be written as a file, by what no answer would tell: names and number of parts; null when it can. */
export function sheetFault(system: System): string | null {
  const parts = partsIn(system);
  const names = parts.flatMap((part) => (part.part === "filter" ? [part.name] : []));
  const twice = names.find((name, at) => names.indexOf(name) !== at);
  if (twice !== undefined) return `another filter is called "${twice}" already; give each its own name`;
  const lists = [...system.tanks.map(({ path }) => path), system.suction, system.delivery ?? []];
  const count = parts.length + lists.flat().filter((part: SystemPart) => part.part === "bank").length;
  return count > MOST_PARTS ? `${count} parts are more than a system file holds; it takes ${MOST_PARTS}` : null;
}
