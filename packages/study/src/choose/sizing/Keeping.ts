import type { CatalogueElement } from "@thirstline/spec/system";
import { reachesRating } from "../betaAt.js";
import { lasts } from "./elementFacts.js";
import type { LifeGate } from "./LifeGate.js";
import { layoutOf } from "./layoutOf.js";
import { isAdditive, keeps, type OrderFacts, orderFacts } from "./OrderFacts.js";
import type { Picked, SearchGiven } from "./SearchKinds.js";
import type { SizeFailure } from "./SizeAnswer.js";
import type { StagePart } from "./StagePart.js";
import { arranged } from "./stack.js";
import type { Tally } from "./Tally.js";

/** More than all drops of an arrangement together, Pa. */
const FAR = 1e12;

/** Whether arrangements as a whole keep the fuel as clean as asked, and last. */
export class Keeping {
  private readonly given: SearchGiven;
  private readonly parts: readonly StagePart[];
  private readonly additive: boolean;
  private readonly known = new Map<string, OrderFacts>();

  constructor(given: SearchGiven, parts: readonly StagePart[]) {
    this.given = given;
    this.parts = parts;
    this.additive = isAdditive(given.stack);
  }

  /** How many orders of elements were looked at. */
  get orders(): number {
    return this.known.size;
  }

  codeOf({ elements }: Picked): string {
    return this.factsOf(elements).code;
  }

  /** What is wrong with an arrangement whose supply holds. */
  fault(picked: Picked, life: LifeGate | null, tally: Tally): SizeFailure | null {
    const { code, rating, interval, stack } = this.given;
    const own = picked.elements.map((one) => this.given.elements[one] as CatalogueElement);
    if (rating && !own.some(({ filter }) => reachesRating(filter, rating))) return "rating";
    const facts = this.factsOf(picked.elements);
    if (code !== null && !keeps(facts.code, code)) return "cleanliness";
    const stages = picked.elements.map((one, at) => ({
      element: own[at] as CatalogueElement,
      count: picked.counts[at] as number,
      part: this.parts[one] as StagePart,
    }));
    const sums = life && facts.caught ? life.judge(stages, facts.caught, facts.elements) : "too close";
    if (sums !== "too close") return sums === "yes" ? null : "interval";
    tally.lives += 1;
    return lasts(arranged(stack, layoutOf(this.given.elements, picked)), interval) ? null : "interval";
  }

  /** How far an arrangement is from not failing by something: by codes too dirty where that is what it fails by, then by drop. */
  miss(by: SizeFailure, picked: Picked, drop: number): number {
    const { code } = this.given;
    return by === "cleanliness" && code !== null ? codesOver(this.codeOf(picked), code) * FAR + drop : drop;
  }

  /** What an order catches does not hang on how many of each stand side by side, so it is worked out once. */
  private factsOf(order: readonly number[]): OrderFacts {
    const key = order.join();
    const known = this.known.get(key);
    if (known) return known;
    const elements = order.map((one) => this.given.elements[one] as CatalogueElement);
    const facts = orderFacts(this.given.stack, elements, this.given.interval, this.additive);
    this.known.set(key, facts);
    return facts;
  }
}

/** Scale numbers over those asked for, added up. */
function codesOver(code: string, asked: string): number {
  const [own, due] = [code.split("/"), asked.split("/")];
  const scale = (text: string | undefined) => (/^\d+$/.test(text ?? "") ? Number(text) : 29);
  return own.reduce((sum, one, at) => sum + Math.max(0, scale(one) - scale(due[at])), 0);
}
