import type { System } from "@thirstline/spec/system";
import { type LifeAnswer, spreadOf } from "@thirstline/study";
import type { ReactiveControllerHost } from "lit";
import { HelperController } from "../aside/HelperController.js";
import type { SoilTargets } from "./SoilTargets.js";

/** As many draws, from the same seed, as the command line takes when nobody says how many. */
export const DRAWS = { draws: 400, seed: 1 };

/** How long the elements of what is on the sheet last, worked out beside the page. */
export class LifeWork {
  /** With its spread once that is drawn; null before the first. */
  answer: LifeAnswer | null = null;
  /** The same as it was first told: what needs no spread is not given it anew with every draw. */
  first: LifeAnswer | null = null;
  /** Where the soil slider leads; null where there is no saying. */
  soil: SoilTargets | null = null;
  /** Share of all draws that are done; null where nothing is drawn. */
  progress: number | null = null;
  private readonly helper: HelperController;

  constructor(host: ReactiveControllerHost) {
    this.helper = new HelperController(host, (outcome) => {
      if (outcome.kind === "life") {
        this.first = outcome.answer;
        this.answer = outcome.answer;
        this.soil = outcome.soil;
        this.progress = outcome.drawn ? 0 : null;
      }
      if (outcome.kind === "draws" && this.answer) {
        this.progress = outcome.lives.length / DRAWS.draws;
        this.answer = { ...this.answer, spread: spreadOf(outcome.lives, this.answer.interval) };
      }
    });
  }

  /** What is to be said of the work itself, or "". */
  get trouble(): string {
    return this.helper.trouble;
  }

  ask(system: System): void {
    this.helper.ask({ kind: "life", system, ...DRAWS });
  }
}
