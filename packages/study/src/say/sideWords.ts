import type { CheckAnswer } from "../check/CheckAnswer.js";

/** What each side of the pump is called, where it ends, and what a gauge there reads. */
export interface SideWords {
  readonly suction: string;
  readonly delivery: string;
  /** where the suction side ends */
  readonly inlet: string;
  /** where the feed pressure is read */
  readonly feed: string;
}

/** The words for a system's sides; with no pump there is one side, from tank to engine. */
export function sideWords(pump: CheckAnswer["pump"]): SideWords {
  return pump === "none"
    ? { suction: "Tank to engine", delivery: "To the engine", inlet: "at the engine", feed: "at the engine" }
    : {
        suction: "Tank to pump",
        delivery: "Pump to injection pump",
        inlet: "at the pump",
        feed: "at the injection pump",
      };
}
