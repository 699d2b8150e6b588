import type { System } from "@thirstline/spec/system";
import type { CardAnswer } from "../../card/CardAnswer.js";
import type { CardOptions } from "../../card/card.js";

/** What a card's figures are worked out from. */
export interface CardGiven {
  readonly system: System;
  /** with the elements changed */
  readonly fitted: System;
  readonly answer: CardAnswer;
  readonly options: CardOptions;
  /** of the fuel on the day, K */
  readonly temperature: number;
}
