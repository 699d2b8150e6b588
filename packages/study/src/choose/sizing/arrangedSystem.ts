import { InputError } from "@thirstline/core";
import type { CatalogueElement, System, SystemPart, SystemSpread } from "@thirstline/spec/system";
import { groupedSpreads, type SpreadOf } from "../groupedSpreads.js";
import { placesOf } from "../places.js";
import type { Arrangement } from "./SizeAnswer.js";
import { arranged, holdsFilter, type Layout, type Side, stackOf } from "./stack.js";

/**
 * The system with an arrangement that `size` found put in: as a file would have it, its elements named after the catalogue's
 * and lettered where several stand side by side, its spreads and the elements' own carried along; one element is one unknown
 * wherever it stands.
 *
 * @param system the one that was searched for
 * @param elements the catalogue that was searched
 * @param side of the answer
 * @throws InputError for an element that is not in the catalogue
 */
export function arrangedSystem(
  system: System,
  elements: readonly CatalogueElement[],
  side: Side,
  { stages, bore }: Pick<Arrangement, "stages" | "bore">,
): System {
  const layout: Layout = {
    bore,
    stages: stages.map(({ element: name, count }) => {
      const element = elements.find((one) => one.name === name);
      if (!element) throw new InputError("arrangedSystem", "element", "one of the catalogue", name);
      return { element, count };
    }),
  };
  const stack = stackOf(system, side);
  const bare = arranged(stack, layout);
  const first = stack.before.length;
  const taken = new Set(placesOf(bare).map(({ part }) => part.name));
  const path = (bare[side] ?? []).map((part, at) => {
    const stage = layout.stages[at - first];
    return stage ? named(part, stage.element.name, taken) : part;
  });
  const own = layout.stages.flatMap(({ element }, at) =>
    ownSpreads(element, [side, first + at], path[first + at] as SystemPart),
  );
  const put = { ...bare, [side]: path };
  // As a file that is read has them, so that the same numbers are drawn for the same figures.
  const spreads = groupedSpreads(inOrder([...keptSpreads(system, side, layout, first), ...own], put));
  return spreads.length === 0 ? put : { ...put, spreads };
}

/** A stage under the name of its element; no two parts of a system share one. */
function named(part: SystemPart, element: string, taken: Set<string>): SystemPart {
  const free = (name: string): string => {
    let own = name;
    for (let more = 2; taken.has(own); more++) own = `${name}, ${more}`;
    taken.add(own);
    return own;
  };
  if (part.part !== "bank") return { ...part, name: free(element) };
  const branches = part.branches.map((branch, at) =>
    branch.map((one) => ({ ...one, name: free(`${element} ${String.fromCharCode(65 + at)}`) })),
  );
  // A file names no banks.
  return { ...part, name: "bank", branches };
}

function ownSpreads({ name, spreads }: CatalogueElement, path: SystemSpread["path"], part: SystemPart): SpreadOf[] {
  const places = part.part === "bank" ? part.branches.map((_, at) => [...path, "branches", at, 0]) : [path];
  return places.flatMap((place) =>
    spreads.map((spread, at) => ({
      spread: { ...spread, path: [...place, ...spread.path] },
      unknown: `${name} ${spread.group ?? at}`,
    })),
  );
}

/** What a file states with a spread and is still there, at its new place. */
function keptSpreads(system: System, side: Side, { stages, bore }: Layout, first: number): SpreadOf[] {
  let next = first + stages.length;
  const moved = (system[side] ?? []).map((part, at) => (holdsFilter(part) ? null : at < first ? at : next++));
  return (system.spreads ?? []).flatMap((spread, at): SpreadOf[] => {
    const [list, place, ...rest] = spread.path;
    const unknown = `own ${spread.group ?? at}`;
    if (list !== side) return [{ spread, unknown }];
    const to = moved[Number(place)];
    // A bore that is tried out takes the place of the file's, whatever that was.
    if (to === null || to === undefined || (bore !== null && rest.at(-1) === "bore")) return [];
    return [{ spread: { ...spread, path: [side, to, ...rest] }, unknown }];
  });
}

/** In the order in which their figures stand in a system. */
function inOrder(spreads: readonly SpreadOf[], system: System): SpreadOf[] {
  const places = new Map<string, number>();
  const visit = (value: unknown, path: SystemSpread["path"]): void => {
    if (typeof value === "number") places.set(JSON.stringify(path), places.size);
    if (typeof value !== "object" || value === null) return;
    for (const [key, inner] of Object.entries(value)) visit(inner, [...path, Array.isArray(value) ? Number(key) : key]);
  };
  visit(system, []);
  const placeOf = ({ spread }: SpreadOf) => places.get(JSON.stringify(spread.path)) ?? places.size;
  return [...spreads].sort((one, other) => placeOf(one) - placeOf(other));
}
