import type { Regime } from "@thirstline/core";
import type { PartRow } from "../../check/CheckAnswer.js";
import type { PartPath, Step } from "../Step.js";

/** What the fuel meets on its way, with how its figures are reached. Steps are made when asked for. */
export interface Stop {
  /** as the answers name it */
  readonly name: string;
  readonly kind: PartRow["kind"];
  readonly depth: number;
  readonly path: PartPath | null;
  /** flow through it */
  readonly flow: Step;
  /** what it costs; null where nothing flows */
  readonly drop: () => Step | null;
  /** pressure behind it, absolute; null where nothing flows */
  readonly pressure: () => Step | null;
  /** in its bore; null in what has none */
  readonly reynolds: (() => Step) | null;
  readonly regime: Regime | null;
}

/** A stretch of path: its stops in order, those inside banks behind their bank, and its costs. */
export interface Stretch {
  readonly stops: readonly Stop[];
  /** costs of what stands on the stretch itself, in order */
  readonly costs: readonly (() => Step | null)[];
  /** bore in which the fuel leaves it; null where none is known */
  readonly bore: Step | null;
}
