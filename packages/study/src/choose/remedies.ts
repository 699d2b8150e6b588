import type { System, SystemBank, SystemFilter, SystemPart } from "@thirstline/spec/system";
import { nextBore } from "./hoseBores.js";
import { filterPlaces, placesOf } from "./places.js";
import type { Remedy } from "./RemedyAnswer.js";

/** How much is changed where nothing says how much can be; common practice, no source. */
const STEP = { shorter: 0.75, warmer: 10, height: 0.3 } as const;

/**
 * Every single change there is to a system, each by itself.
 *
 * @param boils whether the fuel's vapour pressure is what binds: then cooler fuel helps, and warmer harms
 */
export function remediesOf(system: System, boils: boolean): Remedy[] {
  return [
    ...soiled(system),
    ...shut(system),
    ...vents(system),
    ...tanks(system),
    ...bores(system),
    ...runs(system),
    ...fittings(system),
    ...elements(system),
    boils ? { kind: "cooler fuel", by: STEP.warmer } : { kind: "warmer fuel", by: STEP.warmer },
    system.pump.kind === "none" ? { kind: "higher tank", by: STEP.height } : { kind: "lower pump", by: STEP.height },
  ];
}

function soiled(system: System): Remedy[] {
  return filterPlaces(system).flatMap(({ part: { name, restriction = 1 } }): Remedy[] =>
    restriction > 1 ? [{ kind: "clean element", part: name, restriction }] : [],
  );
}

function shut(system: System): Remedy[] {
  return filterPlaces(system).flatMap(({ part: { name, blocked } }): Remedy[] =>
    blocked ? [{ kind: "open branch", part: name }] : [],
  );
}

function vents({ tanks: all }: System): Remedy[] {
  return all.flatMap(({ name, vent }): Remedy[] => (vent.kind === "open" ? [] : [{ kind: "open vent", tank: name }]));
}

/** Half full at least, where it is run lower than that. */
function tanks({ tanks: all }: System): Remedy[] {
  return all.flatMap(({ name, fullDepth, lowDepth }): Remedy[] =>
    fullDepth / 2 > lowDepth ? [{ kind: "fuller tank", tank: name, from: lowDepth, to: fullDepth / 2 }] : [],
  );
}

/** All lines and fittings of one bore on one side: a run of hose is replaced as a whole. */
function bores(system: System): Remedy[] {
  const sides = new Map<string, { side: "suction" | "delivery"; from: number; parts: string[] }>();
  for (const { part, path } of placesOf(system)) {
    if (part.part !== "line") continue;
    const side = path[0] === "delivery" ? "delivery" : "suction";
    const key = `${side} ${part.bore}`;
    const known = sides.get(key);
    if (known) known.parts.push(part.name);
    else sides.set(key, { side, from: part.bore, parts: [part.name] });
  }
  return [...sides.values()].map((one): Remedy => {
    const { bore, listed } = nextBore(one.from);
    return { kind: "wider bore", ...one, to: bore, listed };
  });
}

function runs(system: System): Remedy[] {
  return placesOf(system).flatMap(({ part }): Remedy[] =>
    part.part === "line"
      ? [{ kind: "shorter run", part: part.name, from: part.length, to: part.length * STEP.shorter }]
      : [],
  );
}

/** Half of them away; of one, that one. */
function fittings(system: System): Remedy[] {
  return placesOf(system).flatMap(({ part }): Remedy[] =>
    part.part === "fitting"
      ? [{ kind: "fewer fittings", part: part.name, from: part.count, to: Math.floor(part.count / 2) }]
      : [],
  );
}

/** A branch more, and twice the area: of a filter alone, or of all those side by side in a bank at once. */
function elements(system: System): Remedy[] {
  const groups: string[][] = [];
  const inside = (parts: readonly SystemPart[]): void => {
    for (const part of parts) {
      if (part.part === "filter") groups.push([part.name]);
      if (part.part !== "bank") continue;
      const heads = headsOf(part);
      if (heads.length > 0) groups.push(heads.map(({ name }) => name));
      if (heads.length < part.branches.length) part.branches.forEach(inside);
    }
  };
  for (const tank of system.tanks) inside(tank.path);
  inside(system.suction);
  inside(system.delivery ?? []);
  return groups.flatMap((parts): Remedy[] => [
    { kind: "one more branch", parts },
    { kind: "larger element", parts },
  ]);
}

/** The filters of a bank whose every branch has exactly one; none of any other bank. */
export function headsOf(bank: SystemBank): SystemFilter[] {
  const heads = bank.branches.map((branch) => branch.filter((part): part is SystemFilter => part.part === "filter"));
  return heads.every(({ length }) => length === 1) ? heads.flat() : [];
}
