import { DUST_DENSITY } from "@thirstline/core";
import type { Report } from "../also.js";

/**
 * Most soil on a medium, kg/m2, that is not a misplaced digit: 25 times the most that filter handbooks state (20 mg/cm2, from
 * memory), for thick depth media are beyond them. Common practice, no source.
 */
const MOST_ON_MEDIUM = 5;

interface Element {
  readonly style?: string | undefined;
  /** m3 */
  readonly bowl?: number | undefined;
  /** m2 */
  readonly area?: number | undefined;
  /** m */
  readonly thickness?: number | undefined;
  readonly pleats?: { readonly gap: number } | undefined;
  readonly tests?: readonly { readonly soil: number }[] | undefined;
}

/**
 * Faults a capacity that the element has no room for, as far as its figures tell: inside its bowl, within its folds (half
 * a gap belongs to each wall) and medium, or on its area.
 */
export function checkRoom({ style, bowl, area, thickness, pleats, tests }: Element, report: Report): void {
  const rooms: [most: number, where: string][] = [];
  if (bowl !== undefined && style === "bowl") rooms.push([bowl * DUST_DENSITY, "its bowl"]);
  if (area !== undefined) rooms.push([area * MOST_ON_MEDIUM, "a medium of its area"]);
  if (area !== undefined && thickness !== undefined && pleats !== undefined) {
    rooms.push([area * (thickness + pleats.gap / 2) * DUST_DENSITY, "its folds and medium"]);
  }
  const [least] = rooms.sort(([one], [other]) => one - other);
  if (least === undefined || !Array.isArray(tests)) return;
  const [most, where] = least;
  tests.forEach((test, at) => {
    if (!(test?.soil > most)) return;
    const message = `more soil than ${where} can hold, ${Number((most * 1000).toPrecision(2))} g at the very most; check both figures`;
    report([at, "soil"], "no room", message);
  });
}
