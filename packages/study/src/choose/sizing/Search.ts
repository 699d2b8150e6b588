import type { CatalogueElement, System } from "@thirstline/spec/system";
import { type AskedRating, reachesRating } from "../betaAt.js";
import { lasts, mostFlows, ownFault } from "./elementFacts.js";
import type { Fits } from "./freeDrop.js";
import { LifeGate, type StagePart, stagePartOf } from "./LifeGate.js";
import { isAdditive, keeps, type OrderFacts, orderFacts, slipsToTank } from "./OrderFacts.js";
import type { SizeFailure } from "./SizeAnswer.js";
import { SupplyGate } from "./SupplyGate.js";
import { arranged, type Layout, type Stack } from "./stack.js";
import { firstLimit } from "./supplyLimits.js";
import { vacuumsOf } from "./vacuumsOf.js";

/** What is searched. */
export interface SearchGiven {
  readonly stack: Stack;
  readonly elements: readonly CatalogueElement[];
  /** most side by side, and most stages */
  readonly parallel: number;
  readonly stages: number;
  readonly bores: readonly (number | null)[];
  /** K */
  readonly temperatures: readonly number[];
  readonly code: string | null;
  readonly rating: AskedRating | null;
  /** s */
  readonly interval: number;
}

/** One arrangement found to meet every limit: places in the list of elements, counts and bore. */
export interface Found {
  readonly elements: readonly number[];
  readonly counts: readonly number[];
  readonly bore: number | null;
  readonly vacuum: number;
  readonly code: string;
}

/** Where a search stands: stages so far, and their drops. */
interface Node {
  readonly elements: readonly number[];
  readonly counts: readonly number[];
  readonly drops: Float64Array;
  readonly forVacuum: Float64Array;
}

/** How many arrangements there are with up to so many stages. */
export function countOf(perStage: number, stages: number): number {
  return Array.from({ length: stages }, (_, at) => perStage ** (at + 1)).reduce((sum, one) => sum + one, 0);
}

/**
 * The search for arrangements, stage after stage from the tank on. What begins with stages that fail is ruled out as a
 * whole: another stage only adds drop, and leaves each element's own flow and what is not known of it as they are.
 * Cleanliness is not such a limit, since another stage may mend it; nor is the interval.
 */
export class Search {
  readonly found: Found[] = [];
  readonly failed = new Map<SizeFailure, { count: number; example: Layout }>();
  spared = 0;
  bySums = 0;
  byModel = 0;
  lives = 0;
  /** arrangements judged or ruled out */
  done = 0;
  private readonly given: SearchGiven;
  private readonly exactOnly: boolean;
  private readonly additive: boolean;
  private readonly parts: readonly StagePart[];
  /** what is wrong with an element wherever it stands */
  private readonly ownFaults: readonly (SizeFailure | null)[];
  private readonly orders = new Map<string, OrderFacts>();

  constructor(given: SearchGiven) {
    this.given = given;
    this.exactOnly = slipsToTank(given.stack.system);
    this.additive = isAdditive(given.stack);
    this.parts = given.elements.map((element) => stagePartOf(given.stack, element));
    this.ownFaults = given.elements.map((element, at) => ownFault(element, this.parts[at] as StagePart));
  }

  get orderCount(): number {
    return this.orders.size;
  }

  /** Goes through all arrangements, handing over now and then so that others may have their turn. */
  *run(): Generator<number, void> {
    for (const bore of this.given.bores) yield* this.withBore(bore);
  }

  private *withBore(bore: number | null): Generator<number, void> {
    const { stack, temperatures, elements, parallel } = this.given;
    const gate = SupplyGate.of(stack, bore, { temperatures, elements, counts: parallel });
    const life = this.additive ? new LifeGate(stack, bore) : null;
    const vacuums = vacuumsOf(stack, bore, temperatures, elements, parallel);
    const flows = mostFlows(stack, bore, temperatures);
    const start = { elements: [], counts: [], drops: gate.none, forVacuum: vacuums.base };
    yield* this.below(start, { bore, gate, life, vacuums, flows });
  }

  private *below(node: Node, at: Bench): Generator<number, void> {
    const { elements, parallel, stages } = this.given;
    for (let element = 0; element < elements.length; element++) {
      for (let count = 1; count <= parallel; count++) {
        const next: Node = {
          elements: [...node.elements, element],
          counts: [...node.counts, count],
          drops: at.gate.with(node.drops, element, count),
          forVacuum: at.vacuums.with(node.forVacuum, element, count),
        };
        const deeper = countOf(elements.length * parallel, stages - next.elements.length);
        const broken = this.prefixFault(next, at);
        if (broken) {
          this.fail(broken, next, at.bore, 1 + deeper);
          this.spared += deeper;
          this.done += 1 + deeper;
        } else {
          this.done += 1;
          const fault = this.wholeFault(next, at);
          if (fault) this.fail(fault, next, at.bore, 1);
          else this.take(next, at);
          if (deeper > 0) yield* this.below(next, at);
        }
      }
      yield this.done;
    }
  }

  /** What is wrong already and stays so with any stage more. */
  private prefixFault({ elements, counts, drops }: Node, { bore, gate, flows }: Bench): SizeFailure | null {
    const element = elements.at(-1) as number;
    const own = this.ownFaults[element];
    if (own) return own;
    const { mostFlow } = this.given.elements[element] as CatalogueElement;
    if (mostFlow !== undefined && flows / (counts.at(-1) as number) > mostFlow) return "most flow";
    if (!this.exactOnly) {
      const { fits, limit } = gate.judge(drops);
      if (fits !== "too close") {
        this.bySums += 1;
        return limit;
      }
    }
    this.byModel += 1;
    return firstLimit(this.systemOf(elements, counts, bore), this.given.temperatures);
  }

  /** What is wrong with an arrangement as a whole. */
  private wholeFault({ elements, counts }: Node, { bore, life }: Bench): SizeFailure | null {
    const { code, rating, interval } = this.given;
    if (
      rating &&
      !elements.some((one) => reachesRating((this.given.elements[one] as CatalogueElement).filter, rating))
    ) {
      return "rating";
    }
    const facts = this.factsOf(elements);
    if (code !== null && !keeps(facts.code, code)) return "cleanliness";
    const sums: Fits =
      life && facts.soil
        ? life.judge(
            elements.map((one, at) => ({
              element: this.given.elements[one] as CatalogueElement,
              count: counts[at] as number,
              part: this.parts[one] as StagePart,
            })),
            facts,
          )
        : "too close";
    if (sums !== "too close") return sums === "yes" ? null : "interval";
    this.lives += 1;
    return lasts(this.systemOf(elements, counts, bore), interval) ? null : "interval";
  }

  private factsOf(order: readonly number[]): OrderFacts {
    const key = order.join();
    const known = this.orders.get(key);
    if (known) return known;
    const elements = order.map((one) => this.given.elements[one] as CatalogueElement);
    const facts = orderFacts(this.given.stack, elements, this.given.interval, this.additive);
    this.orders.set(key, facts);
    return facts;
  }

  private take({ elements, counts, forVacuum }: Node, { bore }: Bench): void {
    const vacuum = forVacuum.reduce((most, one) => Math.max(most, one), -Infinity);
    this.found.push({ elements, counts, bore, vacuum, code: this.factsOf(elements).code });
  }

  private fail(by: SizeFailure, { elements, counts }: Node, bore: number | null, count: number): void {
    const known = this.failed.get(by);
    if (known) known.count += count;
    else this.failed.set(by, { count, example: this.layoutOf(elements, counts, bore) });
  }

  private layoutOf(elements: readonly number[], counts: readonly number[], bore: number | null): Layout {
    const stages = elements.map((one, at) => ({
      element: this.given.elements[one] as CatalogueElement,
      count: counts[at] as number,
    }));
    return { stages, bore };
  }

  private systemOf(elements: readonly number[], counts: readonly number[], bore: number | null): System {
    return arranged(this.given.stack, this.layoutOf(elements, counts, bore));
  }
}

/** What is the same for all arrangements with one bore. */
interface Bench {
  readonly bore: number | null;
  readonly gate: SupplyGate;
  readonly life: LifeGate | null;
  readonly vacuums: ReturnType<typeof vacuumsOf>;
  /** most flow through the stack, m3/s */
  readonly flows: number;
}
