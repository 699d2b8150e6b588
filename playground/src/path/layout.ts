import type { Item, Station } from "./Station.js";

/** An item with where its symbol stands: along the path and beside it, px. */
export interface Spot {
  readonly item: Item;
  readonly along: number;
  readonly beside: number;
  /** of its symbol, 1 unless branches stand close */
  readonly size: number;
}

/** A station with the stretch of the path it takes, px. */
export interface Laid {
  readonly station: Station;
  readonly from: number;
  readonly to: number;
  readonly middle: number;
  /** its own spot, or for a bank those of each branch */
  readonly lanes: readonly (readonly Spot[])[];
}

/** Where everything stands. */
export interface Layout {
  readonly laid: readonly Laid[];
  /** whether the path runs down the page */
  readonly upright: boolean;
  /** along the path, px */
  readonly length: number;
  /** furthest that anything stands from the middle of the path, px */
  readonly half: number;
}

/** Least room along the path for a name that can be read, px; with less the path is turned upright. */
const LEAST_PITCH = 88;
/** A bank takes at least so many stations' room: it has a gap before and behind each part. */
const BANK_SLOTS = 1.6;
/** Room for one station down the page, px. */
const UPRIGHT_PITCH = 92;
/** Room for one name in the list of a bank's parts down the page, px. */
const UPRIGHT_NAME = 38;
/** Between branches across and down the page, px, and the most that all branches of a bank take together. */
const LANE = { across: 56, upright: 46 };
const MOST_LANES = { across: 448, upright: 96 };
/** Beside the outermost of them, px. */
const BESIDE = { across: 38, upright: 28 };

/** Lays stations out over a width, px: across the page where every name has room, else down it; on paper always across. */
export function layout(stations: readonly Station[], width: number, paper = false): Layout {
  const slots = stations.map(slotsOf);
  const all = slots.reduce((sum, one) => sum + one, 0);
  const upright = !paper && width / all < LEAST_PITCH;
  const pitch = width / all;
  let from = 0;
  const laid = stations.map((station, at): Laid => {
    const long = upright ? uprightLength(station, slots[at] ?? 1) : (slots[at] ?? 1) * pitch;
    const to = from + long;
    const one = { station, from, to, middle: (from + to) / 2, lanes: lanesOf(station, from, to, upright) };
    from = to;
    return one;
  });
  const widest = Math.max(1, ...stations.map(({ branches }) => branches.length));
  const half = ((widest - 1) / 2) * laneOf(widest, upright) + BESIDE[upright ? "upright" : "across"];
  return { laid, upright, length: from, half };
}

/** What is laid out, with other figures of the same parts in the same places. */
export function withStations(laid: readonly Laid[], stations: readonly Station[]): Laid[] {
  return laid.map((one, at) => {
    const station = stations[at] ?? one.station;
    const lanes = one.lanes.map((lane, branch) =>
      lane.map((spot, place) => {
        const item = station.branches.length === 0 ? station.item : station.branches[branch]?.[place];
        return { ...spot, item: item ?? spot.item };
      }),
    );
    return { ...one, station, lanes };
  });
}

function slotsOf({ branches }: Station): number {
  return branches.length === 0 ? 1 : Math.max(BANK_SLOTS, ...branches.map((branch) => branch.length));
}

function uprightLength({ branches }: Station, slots: number): number {
  const names = branches.reduce((sum, branch) => sum + branch.length, 1);
  return Math.max(slots * UPRIGHT_PITCH, branches.length === 0 ? 0 : names * UPRIGHT_NAME + 16);
}

/** Between the branches of a bank, px: many move together. */
function laneOf(branches: number, upright: boolean): number {
  const way = upright ? "upright" : "across";
  return Math.min(LANE[way], MOST_LANES[way] / Math.max(1, branches - 1));
}

function lanesOf({ item, branches }: Station, from: number, to: number, upright: boolean): Spot[][] {
  if (branches.length === 0) return [[{ item, along: (from + to) / 2, beside: 0, size: 1 }]];
  const lane = laneOf(branches.length, upright);
  // Down the page the path is drawn turned, which would put the first branch on the right.
  const apart = upright ? -lane : lane;
  const size = Math.min(1, lane / 44);
  return branches.map((branch, place) =>
    branch.map((inner, at) => ({
      item: inner,
      along: from + ((to - from) * (at + 1)) / (branch.length + 1),
      beside: (place - (branches.length - 1) / 2) * apart,
      size,
    })),
  );
}
