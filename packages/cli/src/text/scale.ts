import type { CheckPoint } from "@thirstline/study";

/** Where vacuum and limits stand on a strip. */
export interface Scale {
  /** Pa */
  readonly vacuum: CheckPoint["vacuum"];
  readonly limits: CheckPoint["vacuumLimits"];
}

/** A strip like a dial's: filled to the vacuum, shaded where it may reach, a mark at each limit; null without a limit. */
export function strip({ vacuum, limits }: Scale, width: number): string | null {
  const most = Math.max(limits.clean ?? 0, limits.atChange ?? 0);
  if (most <= 0 || !Number.isFinite(vacuum.high)) return null;
  // The strip goes on past the last limit, so that a vacuum over it is seen to be over.
  const end = Math.max(most * 1.15, vacuum.high * 1.05);
  const cell = (value: number) => Math.min(width - 1, Math.max(0, Math.round((value / end) * width)));
  const letters = Array.from({ length: width }, (_, at) => letter(at, cell(vacuum.low), cell(vacuum.high)));
  if (limits.clean !== null && limits.clean !== limits.atChange) letters[cell(limits.clean)] = "┆";
  letters[cell(limits.atChange ?? most)] = "┃";
  return letters.join("");
}

function letter(at: number, low: number, high: number): string {
  if (at < low) return "█";
  return at < high ? "▒" : "·";
}

/** A bar for a share, in eighths of a character. */
export function bar(share: number, width: number): string {
  const eighths = Math.round(share * width * 8);
  const whole = Math.floor(eighths / 8);
  return "█".repeat(whole) + (["", "▏", "▎", "▍", "▌", "▋", "▊", "▉"][eighths % 8] ?? "");
}
