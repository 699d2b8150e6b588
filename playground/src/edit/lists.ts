import type { System, SystemPart } from "@thirstline/spec/system";
import type { Place } from "../model/Place.js";

type Parts = readonly SystemPart[];

/** The position of a place in the innermost list it stands in. */
export function indexOf(place: Place): number {
  return place.inner ?? place.at;
}

/** The innermost list a place stands in: a branch, or one side of the path. */
export function listAt(system: System, place: Place): Parts {
  const side = sideOf(system, place);
  if (place.branch === undefined) return side;
  const bank = side[place.at];
  return bank?.part === "bank" ? (bank.branches[place.branch] ?? []) : [];
}

/** The part at a place; undefined where there is none any more. */
export function partAt(system: System, place: Place): SystemPart | undefined {
  return listAt(system, place)[indexOf(place)];
}

/** The system with the innermost list of a place changed. */
export function withList(system: System, place: Place, change: (parts: Parts) => Parts): System {
  const { branch } = place;
  if (branch === undefined) return withSide(system, place, change);
  return withSide(system, place, (side) =>
    side.map((part, at) => {
      if (at !== place.at || part.part !== "bank") return part;
      return { ...part, branches: part.branches.map((parts, lane) => (lane === branch ? change(parts) : parts)) };
    }),
  );
}

/** The system with the list a place's bank stands in changed. */
export function withSide(system: System, { side, tank }: Place, change: (parts: Parts) => Parts): System {
  switch (side) {
    case "suction":
      return { ...system, suction: change(system.suction) };
    case "delivery": {
      const { delivery = [], ...rest } = system;
      const changed = change(delivery);
      // A side with nothing on it is one that is not stated.
      return changed.length === 0 ? rest : { ...rest, delivery: changed };
    }
    case "tank":
      return {
        ...system,
        tanks: system.tanks.map((one, at) => (at === tank ? { ...one, path: change(one.path) } : one)),
      };
  }
}

function sideOf(system: System, { side, tank }: Place): Parts {
  if (side === "tank") return system.tanks[tank ?? 0]?.path ?? [];
  return side === "suction" ? system.suction : (system.delivery ?? []);
}
