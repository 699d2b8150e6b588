import { fitElement, swap } from "@thirstline/study";
import type { Progress } from "../aside/asideMessages.js";
import { drawLives } from "./drawLives.js";
import type { Asked, Told } from "./messages.js";

/** The answer to a swap at once, and again when its lives are drawn. */
export function workSwap(asked: Extract<Asked, { kind: "swap" }>, tell: (told: Told | Progress) => void): void {
  const { system, at, draws, options } = asked;
  const given = { at, with: asked.with };
  const first = swap(system, given, { ...options, draws: 0 });
  const drawn = draws > 0 && (first.now.lifeKnown || first.changed.lifeKnown);
  tell({ kind: "swap", answer: first, done: !drawn });
  if (!drawn) return;
  const words = "Drawing what is uncertain";
  const [now, changed] = drawLives([system, fitElement(system, first.at, asked.with)], draws, (done, of) =>
    tell({ kind: "progress", words, done, of }),
  );
  if (now && changed)
    tell({ kind: "swap", answer: swap(system, given, { ...options, lives: { now, changed } }), done: true });
}
