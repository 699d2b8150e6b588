import type { MapPoint } from "./MapPoint.js";

/** Fuel temperatures across the map, K: -40 to 60 degC. */
export const TEMPERATURES: readonly number[] = Array.from({ length: 26 }, (_, at) => 233.15 + 4 * at);
const [COLDEST, WARMEST] = [233.15, 333.15];
const HEIGHT = 320;
const ROOM = { left: 58, right: 10, top: 12, bottom: 44 };

/** Where temperatures and demands stand on a map of one width, px. */
export class MapFrame {
  readonly width: number;
  readonly height = HEIGHT;
  readonly left = ROOM.left;
  readonly right: number;
  readonly ceiling = ROOM.top;
  readonly floor = HEIGHT - ROOM.bottom;
  readonly coldest = COLDEST;
  readonly warmest = WARMEST;
  /** the largest demand shown, m3/s: over the highest ceiling there is, and well over the demand */
  readonly top: number;

  constructor(width: number, points: readonly MapPoint[], demand: number) {
    this.width = width;
    this.right = width - ROOM.right;
    const ceilings = points.flatMap(({ clean, atChange }) => [clean, atChange.low, atChange.high]);
    this.top = Math.max(1.5 * demand, ...ceilings.filter((one) => one < 5 * demand).map((one) => 1.15 * one));
  }

  x(temperature: number): number {
    return this.left + ((temperature - COLDEST) / (WARMEST - COLDEST)) * (this.right - this.left);
  }

  y(demand: number): number {
    return this.floor - (Math.min(demand, this.top) / this.top) * (this.floor - this.ceiling);
  }

  xy(temperature: number, demand: number): string {
    return `${this.x(temperature).toFixed(1)} ${this.y(demand).toFixed(1)}`;
  }

  /** What stands at a pixel: K, to the half degree as a thermometer is read, and m3/s; null outside the map. */
  at(px: number, py: number): { readonly temperature: number; readonly demand: number } | null {
    const across = (px - this.left) / (this.right - this.left);
    const up = (this.floor - py) / (this.floor - this.ceiling);
    if (across < 0 || across > 1 || up < 0.01 || up > 1) return null;
    const degrees = Math.round((COLDEST + across * (WARMEST - COLDEST) - 273.15) * 2) / 2;
    return { temperature: Number((degrees + 273.15).toFixed(2)), demand: up * this.top };
  }
}
