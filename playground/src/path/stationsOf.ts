import type { System, SystemBank, SystemPart } from "@thirstline/spec/system";
import type { CheckPoint, PartRow } from "@thirstline/study";
import type { Place } from "../model/Place.js";
import type { Item, Station } from "./Station.js";

/** Hands out the rows of an answer in order; they stand in the order of the system's parts, branches included. */
class Rows {
  private next = 0;
  private readonly rows: readonly PartRow[];

  constructor(rows: readonly PartRow[]) {
    this.rows = rows;
  }

  take(): PartRow | null {
    return this.rows[this.next++] ?? null;
  }
}

/**
 * The path of a system as stations, each with its row of the answer: tank or tanks, parts and banks up to the pump, the
 * pump, parts up to the engine, and the engine.
 */
export function stationsOf(system: System, point: CheckPoint): Station[] {
  const suction = new Rows(point.suction);
  const delivery = new Rows(point.delivery);
  const hasPump = system.pump.kind !== "none";
  const onward = (system.delivery ?? []).map((part, at) => partStation(part, { side: "delivery", at }, delivery));
  const pump: Station = {
    item: {
      shape: { kind: "pump", pump: system.pump.kind },
      name: pumpName(system),
      chosen: { kind: "pump" },
      row: null,
    },
    branches: [],
    side: "delivery",
  };
  const injection = hasPump && system.pump.kind !== "pulse";
  const engine: Station = {
    item: {
      shape: { kind: "engine", injection },
      name: injection ? "injection pump" : "engine",
      chosen: { kind: "engine" },
      row: null,
    },
    branches: [],
    side: hasPump ? "delivery" : "suction",
  };
  return [
    tankStation(system, suction),
    ...system.suction.map((part, at) => partStation(part, { side: "suction", at }, suction)),
    ...(hasPump ? [pump] : []),
    ...onward,
    engine,
  ];
}

function pumpName(system: System): string {
  return system.pump.kind === "pulse" ? "pulse pump" : "lift pump";
}

function tankStation(system: System, rows: Rows): Station {
  const several = system.tanks.length > 1;
  const joint = several ? rows.take() : null;
  const branches = system.tanks.map((tank, index): Item[] => {
    const own: Item = {
      shape: { kind: "tank", index },
      name: tank.name,
      chosen: { kind: "tank", tank: index },
      row: rows.take(),
    };
    const path = tank.path.map((part, at) => {
      const place: Place = { side: "tank", tank: index, at };
      const item = itemOf(part, place, rows);
      // Drawn as one symbol; its branches have rows all the same.
      if (part.part === "bank") branchesOf(part, place, rows);
      return item;
    });
    return [own, ...path];
  });
  const first = branches[0]?.[0] as Item; // a system has at least one tank
  if (!several) return { item: first, branches: [], side: "suction" };
  return { item: { ...first, name: `${branches.length} tanks`, row: joint }, branches, side: "suction" };
}

function partStation(part: SystemPart, place: Place, rows: Rows): Station {
  const item = itemOf(part, place, rows);
  const side = place.side === "delivery" ? "delivery" : "suction";
  return { item, branches: part.part === "bank" ? branchesOf(part, place, rows) : [], side };
}

function branchesOf(bank: SystemBank, place: Place, rows: Rows): Item[][] {
  return bank.branches.map((branch, at) =>
    branch.map((part, inner) => itemOf(part, { ...place, branch: at, inner }, rows)),
  );
}

function itemOf(part: SystemPart, place: Place, rows: Rows): Item {
  const name = part.part === "bank" ? `${part.branches.length} in parallel` : part.name;
  return { shape: { kind: "part", part }, name, chosen: { kind: "part", place }, row: rows.take() };
}
