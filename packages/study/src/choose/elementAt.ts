import type { CatalogueElement, System } from "@thirstline/spec/system";
import { filterPlaces, isInside } from "./places.js";

/** The element that is fitted at a place, as if it came from a catalogue; null where no filter has that name. */
export function elementAt(system: System, name: string): CatalogueElement | null {
  const place = filterPlaces(system).find(({ part }) => part.name === name);
  if (!place) return null;
  const spreads = system.spreads ?? [];
  const own = spreads.filter(({ path }) => isInside(path, place.path));
  return {
    name,
    filter: place.part,
    spreads: own.map(({ path, low, high, group }) => {
      const inside = { path: path.slice(place.path.length), low, high };
      const alike = own.filter((one) => one.group !== undefined && one.group === group);
      return alike.length < 2 ? inside : { ...inside, group: own.findIndex((one) => one.group === group) };
    }),
  };
}
