import type { System, SystemFilter, SystemPart } from "@thirstline/spec/system";

/** Filters of a system that get a new element together: those side by side in a bank, or one by itself. */
export function fittedPlaces(system: System): SystemFilter[][] {
  const groups: SystemFilter[][] = [];
  const inside = (parts: readonly SystemPart[]): void => {
    for (const part of parts) {
      if (part.part === "filter") groups.push([part]);
      if (part.part !== "bank") continue;
      const own = part.branches.flatMap((branch) => branch.filter((one): one is SystemFilter => one.part === "filter"));
      if (own.length > 0) groups.push(own);
    }
  };
  for (const { path } of system.tanks) inside(path);
  inside(system.suction);
  inside(system.delivery ?? []);
  return groups;
}
