import type { System, SystemFilter, SystemPart } from "@thirstline/spec/system";
import { mapParts } from "./mapParts.js";
import type { Remedy } from "./RemedyAnswer.js";
import { headsOf } from "./remedies.js";
import { twiceTheArea } from "./twiceTheArea.js";

/** The system with a change made. Warmer or cooler fuel is no change of the system: its temperature is the caller's. */
export function applyRemedy(system: System, remedy: Remedy): System {
  switch (remedy.kind) {
    case "wider bore":
      return mapParts(system, (part) => widened(part, remedy.from, remedy.to), remedy.side);
    case "shorter run":
      return mapParts(system, (part) =>
        part.part === "line" && part.name === remedy.part ? { ...part, length: remedy.to } : part,
      );
    case "fewer fittings":
      return mapParts(system, (part) => {
        if (part.part !== "fitting" || part.name !== remedy.part) return part;
        return remedy.to === 0 ? [] : { ...part, count: remedy.to };
      });
    case "one more branch":
      return mapParts(system, (part) => withBranch(part, remedy.parts));
    case "larger element":
      return mapParts(system, (part) => (isOne(part, remedy.parts) ? twiceTheArea(part) : part));
    case "clean element":
      return mapParts(system, (part) => (isOne(part, [remedy.part]) ? { ...part, restriction: 1 } : part));
    case "open branch":
      return mapParts(system, (part) => (isOne(part, [remedy.part]) ? { ...part, blocked: false } : part));
    case "open vent":
      return withTank(system, remedy.tank, { vent: { kind: "open" } });
    case "fuller tank":
      return withTank(system, remedy.tank, { lowDepth: remedy.to });
    case "lower pump":
      return climbing(system, remedy.by);
    case "higher tank":
      return { ...system, suction: [...system.suction, fall("tank higher", -remedy.by)] };
    case "warmer fuel":
    case "cooler fuel":
      return system;
  }
}

function widened(part: SystemPart, from: number, to: number): SystemPart {
  return (part.part === "line" || part.part === "fitting") && part.bore === from ? { ...part, bore: to } : part;
}

function isOne(part: SystemPart, names: readonly string[]): part is SystemFilter {
  return part.part === "filter" && names.includes(part.name);
}

/** One more of the same beside a filter, or one more branch in its bank. */
function withBranch(part: SystemPart, names: readonly string[]): SystemPart {
  if (part.part === "filter" && names.length === 1 && isOne(part, names)) {
    return { part: "bank", name: `${part.name} and one more`, branches: [[part], [another(part)]] };
  }
  if (part.part !== "bank") return part;
  const heads = headsOf(part);
  const same = heads.length === names.length && heads.every(({ name }) => names.includes(name));
  const open = part.branches.find((branch) => branch.some((one) => one.part === "filter" && !one.blocked));
  if (!same || !open) return part;
  return { ...part, branches: [...part.branches, open.map((one) => (one.part === "filter" ? another(one) : one))] };
}

/** A new, clean one of the same element. */
function another(filter: SystemFilter): SystemFilter {
  return { ...filter, name: `${filter.name}, one more`, restriction: 1, blocked: false };
}

function withTank(system: System, name: string, change: Partial<System["tanks"][number]>): System {
  return { ...system, tanks: system.tanks.map((tank) => (tank.name === name ? { ...tank, ...change } : tank)) };
}

/** The pump so much lower: its suction climbs less, and its delivery more. */
function climbing(system: System, by: number): System {
  return {
    ...system,
    suction: [...system.suction, fall("pump lower", -by)],
    ...(system.delivery === undefined ? {} : { delivery: [fall("up again from the pump", by), ...system.delivery] }),
  };
}

function fall(name: string, height: number): SystemPart {
  return { part: "rise", name, height };
}
