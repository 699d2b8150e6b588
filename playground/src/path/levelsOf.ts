import { type CheckPoint, quantity, type UnitSystem } from "@thirstline/study";
import type { Descent } from "./descentOf.js";

/** A pressure that matters, drawn straight across a pane. */
export interface Level {
  /** absolute, Pa */
  readonly pressure: number;
  readonly text: string;
  readonly tone: "limit" | "clean limit" | "air" | "vapour";
}

/** What a pane shows: its ends, Pa absolute, and the pressures that matter in it. */
export interface Levels {
  readonly low: number;
  readonly high: number;
  readonly levels: readonly Level[];
  /** said in words where the vapour pressure lies too far down to be drawn; "" otherwise */
  readonly note: string;
}

/** Room left over the highest and under the lowest figure, of all that is shown. */
const MARGIN = 0.08;
/** The vapour pressure is drawn where it makes a pane at most this much taller. */
const STRETCH = 1.7;

/** The suction side: air, both vacuum limits, the vapour pressure; with no pump also what the engine needs. */
export function suctionLevels(descent: Descent, now: Descent | null, point: CheckPoint, system: Shown): Levels {
  const { ambient, suction } = descent;
  const { clean, atChange } = point.vacuumLimits;
  const { units, pump } = system;
  const levels: Level[] = [
    { pressure: ambient, text: `air ${quantity(ambient, "absolute pressure", units)}`, tone: "air" },
  ];
  const vacuum = (value: number) => quantity(value, "vacuum", units);
  if (atChange !== null) {
    levels.push({
      pressure: ambient - atChange,
      text: `limit at change, ${vacuum(atChange)} of vacuum`,
      tone: "limit",
    });
  }
  if (clean !== null && clean !== atChange) {
    const text = `clean limit, ${vacuum(clean)} of vacuum`;
    levels.push({ pressure: ambient - clean, text, tone: "clean limit" });
  }
  if (pump === "none" && point.feedLimit > 0) levels.push(feedLevel(ambient, point.feedLimit, units));
  const shown = [...pressuresIn(descent.suction), ...levels.map(({ pressure }) => pressure)];
  shown.push(
    ...suction.branches
      .flat()
      .map(([, pressure]) => pressure)
      .filter(Number.isFinite),
  );
  // Less than nothing cannot be: a vacuum beyond the air is said in words, not drawn to scale.
  if (now) shown.push(...pressuresIn(now.suction).map((pressure) => Math.max(0, pressure)));
  return withVapour(levels, shown, point.fuel.vapourPressure, units);
}

/** The delivery side: air and what the injection pump needs. */
export function deliveryLevels(
  descent: Descent,
  now: Descent | null,
  point: CheckPoint,
  { units }: Shown,
): Levels | null {
  if (descent.delivery === null) return null;
  const levels = [feedLevel(descent.ambient, point.feedLimit, units)];
  const soiled = now?.delivery ? pressuresIn(now.delivery).map((pressure) => Math.max(0, pressure)) : [];
  const shown = [...pressuresIn(descent.delivery), ...soiled, ...levels.map(({ pressure }) => pressure)];
  return { ...padded(shown), levels, note: "" };
}

/** How a pane is labelled. */
export interface Shown {
  readonly units: UnitSystem;
  readonly pump: "none" | "fixed" | "curve" | "pulse";
}

function feedLevel(ambient: number, limit: number, units: UnitSystem): Level {
  const text =
    limit > 0 ? `least feed pressure, ${quantity(limit, "pressure", units)}` : "least feed pressure, none stated";
  return { pressure: ambient + limit, text, tone: "limit" };
}

function pressuresIn({ main, branches }: Descent["suction"]): number[] {
  return [...main, ...branches.flat()].map(([, pressure]) => pressure).filter(Number.isFinite);
}

function withVapour(levels: Level[], shown: number[], vapour: number, units: UnitSystem): Levels {
  if (!Number.isFinite(vapour)) return { ...padded(shown), levels, note: "" };
  const words = `boils at ${quantity(vapour, "absolute pressure", units)}`;
  const { low, high } = padded(shown);
  if (high - vapour <= STRETCH * (high - low)) {
    const all = padded([...shown, vapour]);
    return { ...all, levels: [...levels, { pressure: vapour, text: `the fuel ${words}`, tone: "vapour" }], note: "" };
  }
  return { low, high, levels, note: `the fuel ${words}, far below` };
}

function padded(values: readonly number[]): { low: number; high: number } {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const room = MARGIN * Math.max(high - low, 1000);
  return { low: low - room, high: high + room };
}
