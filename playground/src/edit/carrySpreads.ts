import type { System, SystemPart, SystemSpread } from "@thirstline/spec/system";

type Path = SystemSpread["path"];

/** A part with where it stands in a system. */
interface Placed {
  readonly part: SystemPart;
  readonly path: Path;
}

/**
 * The spreads of a system after a change, at the places where their figures stand now: a part is known again by its
 * name, a copy by what it shares with the part it was made of. A figure that was changed loses its spread.
 */
export function carrySpreads(before: System, after: System): System {
  const { spreads } = before;
  if (spreads === undefined || before === after || after.spreads !== spreads) return after;
  if (isWholeStill(before, after, spreads)) return after;
  const [old, now] = [placedParts(before), placedParts(after)];
  const carried = spreads.flatMap((spread, at) => {
    const group = spread.group ?? (spreads.some((one) => one.group === at) ? at : undefined);
    return pathsNow(spread, { before, after, old, now }).map((path) => ({
      ...spread,
      path,
      unknown: group ?? `alone ${at}`,
    }));
  });
  const { spreads: _, ...rest } = after;
  return carried.length === 0 ? rest : { ...rest, spreads: grouped(inOrder(carried, after)) };
}

/** Whether no part and no figure with a spread is another; a slider's every step that moves neither asks this. */
function isWholeStill(before: System, after: System, spreads: readonly SystemSpread[]): boolean {
  const { tanks, suction, delivery } = before;
  const sameParts = tanks === after.tanks && suction === after.suction && delivery === after.delivery;
  return sameParts && spreads.every(({ path }) => valueAt(before, path) === valueAt(after, path));
}

interface Both {
  readonly before: System;
  readonly after: System;
  readonly old: readonly Placed[];
  readonly now: readonly Placed[];
}

function pathsNow({ path }: SystemSpread, { before, after, old, now }: Both): Path[] {
  const home = old.filter((one) => startsWith(path, one.path)).sort((a, b) => b.path.length - a.path.length)[0];
  const value = valueAt(before, path);
  if (home === undefined) return valueAt(after, path) === value ? [path] : [];
  const inside = path.slice(home.path.length);
  const block = valueAt(home.part, inside.slice(0, -1));
  const same = (one: Placed): boolean =>
    one.part.name === home.part.name || (inside.length > 1 && valueAt(one.part, inside.slice(0, -1)) === block);
  const places = now.filter((one) => same(one) && valueAt(one.part, inside) === value);
  return places.map((one) => [...one.path, ...inside]);
}

interface Carried extends SystemSpread {
  /** what tells apart the unknowns that figures stand for */
  readonly unknown: number | string;
}

/** In the order of the system's own figures. */
function inOrder(carried: readonly Carried[], system: System): Carried[] {
  const seen = new Map<string, Carried>();
  for (const one of carried) seen.set(one.path.join("/"), one);
  const rank = (path: Path): number[] =>
    path.map((key, at) => Object.keys(valueAt(system, path.slice(0, at)) as object).indexOf(String(key)));
  return [...seen.values()]
    .map((one) => ({ one, rank: rank(one.path) }))
    .sort((a, b) => {
      const at = a.rank.findIndex((place, level) => place !== b.rank[level]);
      return at === -1 ? 0 : (a.rank[at] ?? 0) - (b.rank[at] ?? 0);
    })
    .map(({ one }) => one);
}

/** With the place of the first of each unknown that several figures stand for. */
function grouped(carried: readonly Carried[]): SystemSpread[] {
  return carried.map(({ unknown, group: _, ...spread }) => {
    const places = carried.flatMap((one, at) => (one.unknown === unknown ? [at] : []));
    const [first = 0] = places;
    return places.length > 1 ? { ...spread, group: first } : spread;
  });
}

function placedParts(system: System): Placed[] {
  const all = (parts: readonly SystemPart[], path: Path): Placed[] =>
    parts.flatMap((part, at): Placed[] => {
      const own = { part, path: [...path, at] };
      if (part.part !== "bank") return [own];
      return [own, ...part.branches.flatMap((branch, lane) => all(branch, [...path, at, "branches", lane]))];
    });
  const tanks = system.tanks.flatMap((tank, at) => all(tank.path, ["tanks", at, "path"]));
  return [...tanks, ...all(system.suction, ["suction"]), ...all(system.delivery ?? [], ["delivery"])];
}

function startsWith(path: Path, start: Path): boolean {
  return start.every((key, at) => path[at] === key);
}

function valueAt(of: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<string | number, unknown> | undefined)?.[key], of);
}
