import type { System, SystemPart } from "@thirstline/spec/system";

/** The stated terminal drop of each element that has one, Pa, by the element's name. */
export function terminalDrops(system: System): ReadonlyMap<string, number> {
  const drops = new Map<string, number>();
  const add = (parts: readonly SystemPart[]): void => {
    for (const part of parts) {
      if (part.part === "bank") part.branches.forEach(add);
      if (part.part === "filter" && part.terminalDrop !== undefined) drops.set(part.name, part.terminalDrop);
    }
  };
  for (const tank of system.tanks) add(tank.path);
  add(system.suction);
  add(system.delivery ?? []);
  return drops;
}
