import type { System, SystemPart } from "@thirstline/spec/system";
import { endWord } from "./endWord.js";

/** A part of the path with what stands around it. */
export interface Spot {
  readonly part: SystemPart;
  readonly side: "suction" | "delivery";
  /** neighbours along the path, by name; changes of height are none */
  readonly from: string;
  readonly to: string;
  /** how high the fuel of a full tank stands over it, m */
  readonly head: number;
  /** the row of parts it stands in, and the bank that row is a branch of */
  readonly row: readonly SystemPart[];
  readonly bank: Spot | null;
}

type Around = Pick<Spot, "side" | "from" | "to" | "head" | "bank">;

/** Every part in the order the fuel meets it, each with what stands around it; those in banks after their bank. */
export function spotsOf(system: System): Spot[] {
  const engine = endWord(system);
  const pump = system.pump.kind === "none" ? engine : "the lift pump";
  const first = system.suction.find(({ part }) => part !== "rise");
  const joint = system.tanks.length > 1 ? "the joint of the tanks" : (system.tanks[0]?.name ?? "tank");
  const heads = system.tanks.map(({ fullDepth, path }) => fullDepth - climbOf(path));
  const head = Math.max(...heads);
  const ofTanks = system.tanks.flatMap((tank) =>
    along(tank.path, {
      side: "suction",
      from: tank.name,
      to: first ? nameOf(first) : pump,
      head: tank.fullDepth,
      bank: null,
    }),
  );
  const suction = along(system.suction, { side: "suction", from: joint, to: pump, head, bank: null });
  const atPump = head - climbOf(system.suction);
  const delivery = along(system.delivery ?? [], {
    side: "delivery",
    from: "the lift pump",
    to: engine,
    head: atPump,
    bank: null,
  });
  return [...ofTanks, ...suction, ...delivery];
}

function along(row: readonly SystemPart[], around: Around): Spot[] {
  return row.flatMap((part, at) => {
    const before = row.slice(0, at).findLast((one) => one.part !== "rise");
    const after = row.slice(at + 1).find((one) => one.part !== "rise");
    const spot: Spot = {
      part,
      side: around.side,
      from: before ? nameOf(before) : around.from,
      to: after ? nameOf(after) : around.to,
      head: around.head - climbOf(row.slice(0, at)),
      row,
      bank: around.bank,
    };
    if (part.part !== "bank") return [spot];
    return [spot, ...part.branches.flatMap((branch) => along(branch, { ...spot, bank: spot }))];
  });
}

/** What a mechanic calls a neighbour: a bank by the filters in it. */
function nameOf(part: SystemPart): string {
  if (part.part !== "bank") return part.name;
  const names = part.branches.flat().filter((one) => one.part === "filter");
  return names.length > 0 ? names.map(({ name }) => name).join(" and ") : part.name;
}

/** How far a row climbs, m; the branches of a bank climb alike. */
function climbOf(parts: readonly SystemPart[]): number {
  return parts.reduce((sum, part) => {
    if (part.part === "rise") return sum + part.height;
    return part.part === "bank" ? sum + climbOf(part.branches[0] ?? []) : sum;
  }, 0);
}
