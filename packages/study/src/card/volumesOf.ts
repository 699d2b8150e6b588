import type { SystemLine, SystemPart } from "@thirstline/spec/system";
import type { CardVolumes } from "./CardAnswer.js";
import type { Changeable } from "./changedOf.js";
import { isCock } from "./isCock.js";
import type { Spot } from "./spots.js";

/** Fuel that runs out when these are opened: bodies, and at the worst the lines beside them. What stands in a tank holds none. */
export function volumesOf(changed: readonly Changeable[]): CardVolumes {
  const opened = changed.filter(isOpened);
  const lines = emptiedLines(changed);
  const bodies = opened.map(({ part }) => (part.part === "filter" ? (part.body ?? part.bowl ?? 0) : 0));
  return {
    bodies: bodies.reduce((sum, one) => sum + one, 0),
    unknown: opened
      .filter(({ part }) => part.part === "filter" && part.body === undefined)
      .map(({ part }) => part.name),
    lines: lines.reduce((sum, { length, bore }) => sum + (Math.PI / 4) * bore ** 2 * length, 0),
  };
}

/** Lines beside what is opened, each once. */
export function emptiedLines(changed: readonly Changeable[]): SystemLine[] {
  const opened = changed.filter(isOpened);
  return [...new Set(opened.flatMap((spot) => linesBeside(spot, opened)))];
}

/** Whether changing it opens the path: what hangs in a tank is lifted out of the fuel. */
export function isOpened({ part }: Changeable): boolean {
  return part.part === "filter" && part.style !== "in-tank";
}

/**
 * Lines next to an element, as far as the next thing that keeps fuel back: a cock, a check valve, another element. Where
 * every branch of a bank is opened, those beside the bank too.
 */
function linesBeside(spot: Spot, opened: readonly Changeable[]): SystemLine[] {
  const at = spot.row.indexOf(spot.part);
  const reach = (parts: readonly SystemPart[]) => {
    const end = parts.findIndex(keepsBack);
    return (end === -1 ? parts : parts.slice(0, end)).filter((part): part is SystemLine => part.part === "line");
  };
  const own = [...reach(spot.row.slice(0, at).reverse()), ...reach(spot.row.slice(at + 1))];
  const { bank } = spot;
  if (bank?.part.part !== "bank") return own;
  const whole = bank.part.branches.every((branch) => opened.some(({ row }) => row === branch));
  return whole ? [...own, ...linesBeside(bank, opened)] : own;
}

function keepsBack(part: SystemPart): boolean {
  if (part.part === "valve") return part.oneWay;
  return part.part === "filter" || part.part === "bank" || isCock(part);
}
