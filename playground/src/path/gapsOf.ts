import type { Place } from "../model/Place.js";
import type { Laid, Spot } from "./layout.js";
import { ARROW_TIP, REACH } from "./symbols.js";

/** A gap on the path in which a part can be added. */
export interface Gap {
  readonly place: Place;
  /** px along the path */
  readonly along: number;
  /** px beside the middle of the path */
  readonly beside: number;
  /** where it is, such as "behind tank line" */
  readonly words: string;
}

/** Half of what is seen of a gap, px. */
const HALF = 7;
/** Where branches stand closer than this, px, their gaps could not be told apart with a finger or a mouse. */
const APART = 24;

/**
 * The gaps between stations, in the branches of banks, and behind each of several tanks, each with the place a part added
 * there would take; in the order the fuel goes.
 */
export function gapsOf(laid: readonly Laid[]): Gap[] {
  const next = { suction: 0, delivery: 0 };
  const main = laid.slice(1).flatMap((one, index): Gap[] => {
    const { station, from } = one;
    const { shape, chosen } = station.item;
    // Before the pump a part goes to the end of the suction side; before the engine to the end of its own side.
    const side = shape.kind === "pump" ? "suction" : station.side;
    const place: Place = { side, at: next[side] };
    if (chosen.kind === "part") next[side] = chosen.place.at + 1;
    const words = `behind ${laid[index]?.station.item.name ?? ""}`;
    return [{ place, along: from, beside: 0, words }, ...branchGaps(one, place)];
  });
  return [...(laid[0] ? tankGaps(laid[0]) : []), ...main];
}

/** Before the first part of each branch of a bank, and behind every one. */
function branchGaps({ lanes, from, to }: Laid, place: Place): Gap[] {
  const [first = 0, second = Infinity] = lanes.map((lane) => lane[0]?.beside ?? 0);
  if (lanes.length < 2 || Math.abs(second - first) < APART) return [];
  return lanes.flatMap((lane, branch) => {
    const start = lane[0];
    if (start === undefined) return [];
    const before: Gap = {
      place: { ...place, branch, inner: 0 },
      along: (from + HALF + start.along - REACH * start.size) / 2,
      beside: start.beside,
      words: `before ${start.item.name}`,
    };
    const behind = lane.map((spot, at): Gap => {
      const after = lane[at + 1];
      const end = after === undefined ? to - HALF : after.along - REACH * after.size;
      return {
        place: { ...place, branch, inner: at + 1 },
        along: (pastArrow(spot) + end) / 2,
        beside: spot.beside,
        words: `behind ${spot.item.name}`,
      };
    });
    return [before, ...behind];
  });
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
        words: `behind ${spot.item.name}`,
      };
    }),
  );
}

function pastArrow({ along, size }: Spot): number {
  return along + ARROW_TIP * size;
}
