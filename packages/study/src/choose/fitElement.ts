import type { CatalogueElement, System, SystemFilter, SystemSpread } from "@thirstline/spec/system";
import { groupedSpreads } from "./groupedSpreads.js";
import { filterPlaces, isInside, type Path, type Placed } from "./places.js";

/**
 * A system with an element fitted, new and the right way round, at places named. What belongs to the machine stays: the
 * place's name, whether it is shut off, and the body, thread and flow direction where the element states none. Figures with a spread stay apart from
 * each other as they were; those of the element are one unknown at all of its places.
 *
 * @param names of filters of the system
 */
export function fitElement(system: System, names: readonly string[], element: CatalogueElement): System {
  const places = filterPlaces(system).filter(({ part }) => names.includes(part.name));
  const fitted = places.reduce<System>(
    (changed, { part, path }) => put(changed, path, fittedTo(part, element)) as System,
    system,
  );
  const spreads = spreadsWith(system.spreads ?? [], places, element.spreads);
  const { spreads: _, ...rest } = fitted;
  return spreads.length === 0 ? rest : { ...rest, spreads };
}

function fittedTo({ name, blocked, ...place }: SystemFilter, { filter }: CatalogueElement): SystemFilter {
  const housing = filter.housing ?? place.housing;
  const thread = filter.thread ?? place.thread;
  const direction = filter.direction ?? place.direction;
  return {
    ...filter,
    name,
    blocked,
    ...(housing === undefined ? {} : { housing }),
    ...(thread === undefined ? {} : { thread }),
    ...(direction === undefined ? {} : { direction }),
  };
}

/** Spreads keep their order, since draws go by it: an element's own come where those of the one before it stood. */
function spreadsWith(
  old: readonly SystemSpread[],
  places: readonly Placed[],
  own: readonly SystemSpread[],
): SystemSpread[] {
  const fresh = ({ path }: Placed) =>
    own.map((spread, at) => ({
      spread: { ...spread, path: [...path, ...spread.path] },
      unknown: `own ${spread.group ?? at}`,
    }));
  const left = new Set(places);
  const kept = old.flatMap((spread, at) => {
    const place = places.find(({ path }) => isInside(spread.path, path));
    if (!place) return [{ spread, unknown: `old ${spread.group ?? at}` }];
    return left.delete(place) ? fresh(place) : [];
  });
  return groupedSpreads([...kept, ...[...left].flatMap(fresh)]);
}

/** A copy of plain data with another value at a path. */
function put(data: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  const copy = (Array.isArray(data) ? [...data] : { ...(data as object) }) as Record<string | number, unknown>;
  copy[step] = put(copy[step], rest, value);
  return copy;
}
