import { Bench, type Node } from "./Bench.js";
import { ownFault } from "./elementFacts.js";
import { Keeping } from "./Keeping.js";
import { countOf, type SearchGiven } from "./SearchKinds.js";
import type { SizeEffort, SizeFailure } from "./SizeAnswer.js";
import { type StagePart, stagePartOf } from "./StagePart.js";
import { Tally } from "./Tally.js";

/**
 * The search for arrangements, stage after stage from the tank on. What begins with stages that fail is ruled out as a
 * whole: another stage only adds drop, and leaves each element's own flow and what is not known of it as they are.
 * Cleanliness is not such a limit, since another stage may mend it; nor is the interval.
 */
export class Search {
  readonly tally = new Tally();
  private readonly given: SearchGiven;
  private readonly keeping: Keeping;
  /** what is wrong with an element wherever it stands */
  private readonly ownFaults: readonly (SizeFailure | null)[];

  constructor(given: SearchGiven) {
    this.given = given;
    const parts = given.elements.map((element) => stagePartOf(given.stack, element));
    this.keeping = new Keeping(given, parts);
    this.ownFaults = given.elements.map((element, at) => ownFault(element, parts[at] as StagePart));
  }

  get effort(): SizeEffort {
    const { spared, bySums, byModel, lives } = this.tally;
    return { spared, bySums, byModel, orders: this.keeping.orders, lives };
  }

  /** Goes through all arrangements, handing over how many are done now and then so that others may have their turn. */
  *run(): Generator<number, void> {
    for (const bore of this.given.bores) {
      const bench = new Bench(this.given, bore);
      yield* this.below(bench.start, bench);
    }
  }

  private *below(node: Node, bench: Bench): Generator<number, void> {
    const { tally } = this;
    const { elements, parallel, stages } = this.given;
    const deeper = countOf(elements.length * parallel, stages - node.elements.length - 1);
    for (let element = 0; element < elements.length; element++) {
      for (let count = 1; count <= parallel; count++) {
        const next = bench.with(node, element, count);
        const broken = this.ownFaults[element] ?? bench.fault(next, tally);
        if (broken) {
          tally.fail(broken, next, 1 + deeper, bench.drop(next));
          tally.spared += deeper;
          tally.done += 1 + deeper;
          continue;
        }
        tally.done += 1;
        const fault = this.keeping.fault(next, bench.life, tally);
        if (fault) tally.fail(fault, next, 1, this.keeping.miss(fault, next, bench.drop(next)));
        else this.take(next, bench);
        if (deeper > 0) yield* this.below(next, bench);
      }
      yield tally.done;
    }
  }

  private take(node: Node, bench: Bench): void {
    const { elements, counts, bore } = node;
    this.tally.found.push({ elements, counts, bore, vacuum: bench.vacuum(node), code: this.keeping.codeOf(node) });
  }
}
