import type { Layout } from "./layout.js";

/** Where path, names and descent stand on a drawing of one width, px. */
export interface Sketch {
  readonly height: number;
  /** where the start of the path's middle line is drawn */
  readonly path: { readonly x: number; readonly y: number };
  readonly names: { readonly top: number; readonly left: number; readonly width: number };
  readonly descent: { readonly along: number; readonly low: number; readonly high: number };
  /** the light lines from each symbol down to its step */
  readonly guides: { readonly from: number; readonly to: number };
}

/** Room on the left for the pressures' figures, px. */
const FIGURES = 60;
const SCREEN = { descent: 290, name: 58, inner: 32, gap: 26 };
const PAPER = { descent: 160, name: 34, inner: 15, gap: 10 };
const UPRIGHT_TOP = 30;

/** Places everything: across the page the descent stands under the path, down the page beside it. */
export function sketch({ laid, upright, length, half }: Layout, width: number, paper = false): Sketch {
  if (upright) {
    const left = 2 * half;
    const names = uprightNames(width - left);
    return {
      height: length + UPRIGHT_TOP + 24,
      path: { x: half, y: UPRIGHT_TOP },
      names: { top: 0, left, width: names },
      descent: { along: UPRIGHT_TOP, low: left + names + 14, high: width - 14 },
      guides: { from: 0, to: 0 },
    };
  }
  const sizes = paper ? PAPER : SCREEN;
  const inner = Math.max(0, ...laid.map(({ lanes, station }) => (station.branches.length > 0 ? lanes.length : 0)));
  const top = 2 * half + 4;
  const high = top + sizes.name + inner * sizes.inner + sizes.gap;
  return {
    height: high + sizes.descent + 24,
    path: { x: FIGURES, y: half },
    names: { top, left: 0, width: 0 },
    descent: { along: FIGURES, low: high + sizes.descent, high },
    guides: { from: high - 14, to: high + sizes.descent },
  };
}

/** Room for names down the page, px: on the narrowest screens the descent needs it more, on wide ones long names do. */
function uprightNames(room: number): number {
  return Math.round(Math.min(Math.max(84, 0.47 * room), Math.max(116, 0.25 * room)));
}
