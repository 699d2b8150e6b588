import type { CheckPoint, PartRow } from "@thirstline/study";
import type { Laid, Layout, Spot } from "./layout.js";

/** A point of the descent: where along the path, px, and the absolute pressure there, Pa. */
export type Fall = readonly [along: number, pressure: number];

/** What is drawn of the pressures on one side of the pump. */
export interface Pane {
  readonly from: number;
  readonly to: number;
  /** the main line; it breaks where nothing is known */
  readonly main: readonly Fall[];
  /** branches of banks, each from where it leaves the main line to where it comes back */
  readonly branches: readonly (readonly Fall[])[];
}

/** The descent on both sides; `delivery` is null where nothing is known of it. */
export interface Descent {
  /** Pa */
  readonly ambient: number;
  readonly suction: Pane;
  readonly delivery: Pane | null;
}

/** Half of the stretch over which a part's pressure is drawn falling, px; a line's falls over all of its own. */
const STEEP = 13;
/** How far the suction side's pressures are drawn on towards the pump, px. */
const PUMP_INLET = 16;
/** Between the falls of branches of equal drop, px, so that each is seen. */
const APART = 9;

/** The pressures of an answer along a layout, part by part, static. */
export function descentOf(layout: Layout, point: CheckPoint): Descent {
  const ambient = point.ambientPressure;
  const pump = layout.laid.findIndex(({ station }) => station.item.shape.kind === "pump");
  const before = pump === -1 ? layout.laid : layout.laid.slice(0, pump + 1);
  const suction = paneOf(before, ambient);
  const behind = pump === -1 ? [] : layout.laid.slice(pump);
  const outlet = pump === -1 ? null : outletOf(point, ambient);
  return { ambient, suction, delivery: outlet === null ? null : paneOf(behind, outlet) };
}

function outletOf({ delivery, feedPressure }: CheckPoint, ambient: number): number | null {
  const [first] = delivery;
  if (first === undefined) return feedPressure === null ? null : ambient + feedPressure.middle;
  return first.pressure === null || first.drop === null ? null : first.pressure + first.drop;
}

function paneOf(laid: readonly Laid[], start: number): Pane {
  const pumpFirst = laid[0]?.station.item.shape.kind === "pump";
  const pumpLast = !pumpFirst && laid.at(-1)?.station.item.shape.kind === "pump";
  const from = (pumpFirst ? laid[0]?.to : laid[0]?.from) ?? 0;
  const to = (pumpLast ? laid.at(-1)?.from : laid.at(-1)?.to) ?? 0;
  const main: Fall[] = [];
  const branches: Fall[][] = [];
  let before = start;
  main.push([from, before]);
  for (const { station, lanes, middle, from: left, to: right } of laid) {
    if (station.item.shape.kind === "pump") continue;
    if (station.item.shape.kind === "engine") {
      main.push([middle, before]);
      continue;
    }
    const after = station.item.row?.pressure ?? Number.NaN;
    if (station.branches.length === 0) {
      main.push(...step(lanes[0]?.[0], before, after, { left, right }));
    } else {
      main.push([left + 8, before], [right - 8, after]);
      branches.push(
        ...lanes.map((lane, at) => branch(lane, { before, after, left: left + 8, right: right - 8 }, at, lanes.length)),
      );
    }
    before = after;
  }
  if (pumpLast) main.push([to + PUMP_INLET, before]);
  return { from, to: pumpLast ? to + PUMP_INLET : to, main: withoutBanks(main, laid), branches };
}

/** Inside a bank the branches are drawn instead of the main line. */
function withoutBanks(main: readonly Fall[], laid: readonly Laid[]): Fall[] {
  const banks = laid.filter(({ station }) => station.branches.length > 0);
  return main.flatMap((fall): Fall[] =>
    banks.some(({ to }) => Math.abs(fall[0] - (to - 8)) < 1e-6) ? [[fall[0], Number.NaN], fall] : [fall],
  );
}

function step(spot: Spot | undefined, before: number, after: number, room: { left: number; right: number }): Fall[] {
  if (spot === undefined) return [];
  const long = spot.item.shape.kind === "part" && ["line", "rise"].includes(spot.item.shape.part.part);
  const [left, right] = long ? [room.left + 6, room.right - 6] : [spot.along - STEEP, spot.along + STEEP];
  return [
    [left, before],
    [right, after],
  ];
}

interface Ends {
  readonly before: number;
  readonly after: number;
  readonly left: number;
  readonly right: number;
}

function branch(lane: readonly Spot[], ends: Ends, at: number, of: number): Fall[] {
  const shift = (at - (of - 1) / 2) * APART;
  let before = ends.before;
  const falls = lane.flatMap(({ item, along }, place): Fall[] => {
    const after = place === lane.length - 1 ? ends.after : pressureOf(item.row);
    const found: Fall[] = [
      [along + shift - STEEP, before],
      [along + shift + STEEP, after],
    ];
    before = after;
    return found;
  });
  return [[ends.left, ends.before], ...falls, [ends.right, ends.after]];
}

function pressureOf(row: PartRow | null): number {
  return row?.pressure ?? Number.NaN;
}
