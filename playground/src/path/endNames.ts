import { type SVGTemplateResult, svg } from "lit";
import type { Pane } from "./descentOf.js";

/** Which line is which, said at their ends. */
export function endNames(
  clean: Pane,
  now: Pane,
  frame: { readonly upright: boolean; readonly to: number },
  at: (pressure: number) => number,
): SVGTemplateResult[] {
  const ends = [clean, now].map(({ main }) => at(main.at(-1)?.[1] ?? Number.NaN));
  const along = clean.main.at(-1)?.[0] ?? frame.to;
  const [upper = 0, lower = 0] = ends;
  const near = Math.abs(upper - lower) < (frame.upright ? 40 : 20);
  return ends.map((across, which) => {
    const words = which === 0 ? "clean" : "now";
    const aside = near
      ? (frame.upright ? 20 : 10) * Math.sign(across - (upper + lower) / 2 || (which === 0 ? -1 : 1))
      : 0;
    return frame.upright
      ? svg`<text class="end-name" x=${across + aside} y=${along + 15} text-anchor="middle">${words}</text>`
      : svg`<text class="end-name" x=${along + 7} y=${across + aside + 5}>${words}</text>`;
  });
}
