import type { Place } from "../model/Place.js";
import type { Laid } from "./layout.js";

/** A gap on the path in which a part can be added. */
export interface Gap {
  readonly place: Place;
  /** px along the path */
  readonly along: number;
  /** px beside the middle of the path */
  readonly beside: number;
  /** the name of what stands before it */
  readonly behind: string;
}

/** The gaps between stations, and behind each of several tanks, each with the place a part added there would take. */
export function gapsOf(laid: readonly Laid[]): Gap[] {
  const next = { suction: 0, delivery: 0 };
  const main = laid.slice(1).map(({ station, from }, index): Gap => {
    const { shape, chosen } = station.item;
    // Before the pump a part goes to the end of the suction side; before the engine to the end of its own side.
    const side = shape.kind === "pump" ? "suction" : station.side;
    const place: Place = { side, at: next[side] };
    if (chosen.kind === "part") next[side] = chosen.place.at + 1;
    return { place, along: from, beside: 0, behind: laid[index]?.station.item.name ?? "" };
  });
  return [...(laid[0] ? tankGaps(laid[0]) : []), ...main];
}

/** In the own path of each of several tanks, between its parts. */
function tankGaps({ station, lanes, to }: Laid): Gap[] {
  if (station.branches.length === 0) return [];
  return lanes.flatMap((lane, tank) =>
    lane.map((spot, at): Gap => {
      const after = lane[at + 1]?.along ?? to - 6;
      return {
        place: { side: "tank", tank, at },
        along: (spot.along + after) / 2 + 3,
        beside: spot.beside,
        behind: spot.item.name,
      };
    }),
  );
}
