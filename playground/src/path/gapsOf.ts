import type { Place } from "../model/Place.js";
import type { Laid } from "./layout.js";

/** A gap on the main path in which a part can be added. */
export interface Gap {
  readonly place: Place;
  /** px along the path */
  readonly along: number;
  /** the name of what stands before it */
  readonly behind: string;
}

/** The gaps between stations, each with the place a part added there would take. */
export function gapsOf(laid: readonly Laid[]): Gap[] {
  const next = { suction: 0, delivery: 0 };
  return laid.slice(1).map(({ station, from }, index): Gap => {
    const { shape, chosen } = station.item;
    // Before the pump a part goes to the end of the suction side; before the engine to the end of its own side.
    const side = shape.kind === "pump" ? "suction" : station.side;
    const place: Place = { side, at: next[side] };
    if (chosen.kind === "part") next[side] = chosen.place.at + 1;
    return { place, along: from, behind: laid[index]?.station.item.name ?? "" };
  });
}
