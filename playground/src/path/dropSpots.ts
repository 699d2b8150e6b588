import type { Slot } from "../edit/slots.js";
import type { Place } from "../model/Place.js";
import type { Laid, Layout } from "./layout.js";
import type { Sketch } from "./sketch.js";

/** A place a part can be let go at, with where on the drawing that is, px. */
export interface DropSpot {
  readonly slot: Slot;
  readonly x: number;
  readonly y: number;
}

/** Where on the drawing each slot is. */
export function dropSpots(slots: readonly Slot[], { laid, upright }: Layout, { path }: Sketch): DropSpot[] {
  return slots.flatMap((slot) => {
    const at = spotOf(slot.place, laid);
    if (at === null) return [];
    const [along, beside] = at;
    // Down the page the path is drawn turned by a right angle.
    return [{ slot, x: path.x + (upright ? -beside : along), y: path.y + (upright ? along : beside) }];
  });
}

/** The spot nearest to a pointer, px; null where none is near. */
export function nearestSpot(spots: readonly DropSpot[], x: number, y: number, reach: number): DropSpot | null {
  const far = (one: DropSpot) => Math.hypot(one.x - x, one.y - y);
  const [nearest] = [...spots].sort((a, b) => far(a) - far(b));
  return nearest !== undefined && far(nearest) <= reach ? nearest : null;
}

function spotOf(place: Place, laid: readonly Laid[]): readonly [along: number, beside: number] | null {
  if (place.side === "tank") return betweenIn(laid[0], place.tank ?? 0, place.at + 1);
  const stations = laid.filter(({ station }) => stationSide(station.item.chosen) === place.side);
  const here = stations.find(
    ({ station: { item } }) => item.chosen.kind === "part" && item.chosen.place.at === place.at,
  );
  if (place.branch !== undefined) return betweenIn(here, place.branch, place.inner ?? 0);
  if (here) return [here.from, 0];
  const last = stations.at(-1);
  if (last) return [last.to, 0];
  const before = place.side === "suction" ? laid[0] : laid.find(({ station }) => station.item.chosen.kind === "pump");
  return before ? [before.to, 0] : null;
}

function stationSide(chosen: Laid["station"]["item"]["chosen"]): string | null {
  return chosen.kind === "part" ? chosen.place.side : null;
}

/** Before the so-manieth spot of a lane, half way to the one before it. */
function betweenIn(one: Laid | undefined, lane: number, at: number): readonly [number, number] | null {
  const spots = one?.lanes[lane];
  const [first] = spots ?? [];
  if (one === undefined || spots === undefined || first === undefined) return null;
  const before = spots[at - 1]?.along ?? one.from + 8;
  const after = spots[at]?.along ?? one.to - 8;
  return [(before + after) / 2, first.beside];
}
