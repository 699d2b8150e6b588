import type { CatalogueElement } from "@thirstline/spec/system";
import { mostFlows } from "./elementFacts.js";
import { LifeGate } from "./LifeGate.js";
import { layoutOf } from "./layoutOf.js";
import { isAdditive, slipsToTank } from "./OrderFacts.js";
import type { Picked, SearchGiven } from "./SearchKinds.js";
import type { SizeFailure } from "./SizeAnswer.js";
import { SlipGate } from "./SlipGate.js";
import { SupplyGate } from "./SupplyGate.js";
import { arranged } from "./stack.js";
import { firstLimit, LIMIT_ORDER } from "./supplyLimits.js";
import type { Tally } from "./Tally.js";
import { vacuumsOf } from "./vacuumsOf.js";

/** Stages so far, and what they come to. */
export interface Node extends Picked {
  readonly drops: Float64Array;
  /** of the slip gate; empty without one */
  readonly slips: Float64Array;
  readonly forVacuum: Float64Array;
}

/** What judges the stages of all arrangements with one bore. */
export class Bench {
  readonly life: LifeGate | null;
  readonly start: Node;
  private readonly given: SearchGiven;
  private readonly gate: SupplyGate;
  private readonly slip: SlipGate | null;
  private readonly vacuums: ReturnType<typeof vacuumsOf>;
  /** most flow through the stack, m3/s */
  private readonly flows: number;

  constructor(given: SearchGiven, bore: number | null) {
    const { stack, temperatures, elements, parallel } = given;
    this.given = given;
    const asked = { temperatures, elements, counts: parallel };
    this.gate = SupplyGate.of(stack, bore, asked);
    this.slip = stack.side === "suction" && slipsToTank(stack.system) ? SlipGate.of(stack, bore, asked) : null;
    this.life = isAdditive(stack) ? new LifeGate(stack, bore) : null;
    this.vacuums = vacuumsOf(stack, bore, temperatures, elements, parallel);
    this.flows = mostFlows(stack, bore, temperatures);
    const slips = this.slip?.none ?? new Float64Array(0);
    this.start = { elements: [], counts: [], bore, drops: this.gate.none, slips, forVacuum: this.vacuums.base };
  }

  /** One stage more. */
  with(node: Node, element: number, count: number): Node {
    return {
      elements: [...node.elements, element],
      counts: [...node.counts, count],
      bore: node.bore,
      drops: this.gate.with(node.drops, element, count),
      slips: this.slip?.with(node.slips, element, count) ?? node.slips,
      forVacuum: this.slip ? node.forVacuum : this.vacuums.with(node.forVacuum, element, count),
    };
  }

  /** What is wrong with stages already, and stays so with any stage more. */
  fault(node: Node, tally: Tally): SizeFailure | null {
    const { mostFlow } = this.given.elements[node.elements.at(-1) as number] as CatalogueElement;
    if (mostFlow !== undefined && this.flows / (node.counts.at(-1) as number) > mostFlow) return "most flow";
    const judged = [this.gate.judge(node.drops), ...(this.slip ? [this.slip.judge(node.slips)] : [])];
    if (judged.every(({ close }) => !close)) {
      tally.bySums += 1;
      return LIMIT_ORDER.find((limit) => judged.some(({ broken }) => broken.has(limit))) ?? null;
    }
    tally.byModel += 1;
    const { stack, elements, temperatures } = this.given;
    return firstLimit(arranged(stack, layoutOf(elements, node)), temperatures);
  }

  /** Drop of the stages over all conditions, Pa: the less, the nearer to holding, and the longer it lasts. */
  drop({ drops }: Node): number {
    return drops.reduce((sum, one) => sum + one, 0);
  }

  /** Most vacuum at the pump's inlet over the temperatures, with clean elements, Pa. */
  vacuum({ forVacuum, slips }: Node): number {
    return this.slip ? this.slip.vacuum(slips) : forVacuum.reduce((most, one) => Math.max(most, one), -Infinity);
  }
}
