import { styleText } from "node:util";
import type { Io } from "./Io.js";

/** What a piece of text is, for a terminal that shows colours. */
export type Tone = "good" | "care" | "bad" | "quiet" | "strong";

/** Puts a tone on a text, or leaves it plain. */
export type Paint = (tone: Tone, text: string) => string;

const styles = {
  good: ["bold", "green"],
  care: ["bold", "yellow"],
  bad: ["bold", "red"],
  quiet: ["dim"],
  strong: ["bold"],
} as const satisfies Record<Tone, readonly string[]>;

/** Colours for a terminal that wants them, else none. */
export function painter(io: Pick<Io, "isTerminal" | "environment">): Paint {
  return wantsColour(io) ? (tone, text) => styleText([...styles[tone]], text) : (_, text) => text;
}

/** FORCE_COLOR decides first, then NO_COLOR, then whether it is a terminal that can. */
function wantsColour({ isTerminal, environment }: Pick<Io, "isTerminal" | "environment">): boolean {
  const { FORCE_COLOR: forced, NO_COLOR: refused, TERM: terminal } = environment;
  if (forced !== undefined) return forced !== "0" && forced !== "false";
  if (refused !== undefined && refused !== "") return false;
  return isTerminal && terminal !== "dumb";
}
