import type { System } from "@thirstline/spec/system";
import type { FigureMaker } from "./figures/FigureMaker.js";
import type { Leaf } from "./leaves/Leaf.js";
import type { Working } from "./Step.js";
import { workingOf } from "./workingOf.js";

/** What of an answer has figures: the whole of it, or one of what it is about. */
export interface Member {
  /** how it is called */
  readonly name: string;
  /** for figures of `check` and `life`; null where there is no system to it */
  readonly system: System | null;
  readonly own: readonly FigureMaker[];
}

/** What an answer is about, by names such as "machine 0" or "suction". */
export interface Members {
  /** the one of a name; null for none */
  readonly get: (of: string) => Member | null;
  /** in the order of the answer */
  readonly names: readonly string[];
}

/** Members that are made when first asked for. */
export function membersOf(makers: ReadonlyMap<string, () => Member | null>): Members {
  const made = new Map<string, Member | null>();
  const get = (of: string): Member | null => {
    const found = made.get(of) ?? makers.get(of)?.() ?? null;
    made.set(of, found);
    return found;
  };
  return { get, names: [...makers.keys()] };
}

/** How a figure of a member was reached: one of its own, or of `check` or `life` of its system. */
export function memberWorking(members: Members, of: string, { figure, asked }: Leaf): Working | null {
  const member = members.get(of);
  if (!member) return null;
  const own = member.own.find(({ name }) => name === figure);
  const step = own ? own.make() : member.system && (workingOf(member.system, figure, asked)?.step ?? null);
  return step && Number.isFinite(step.value) ? { figure, system: member.name, step } : null;
}

/** Names of the figures that a member has of its own, those with a value only. */
export function memberFigures(members: Members, of: string): readonly string[] {
  return (members.get(of)?.own ?? []).filter(({ make }) => make() !== null).map(({ name }) => name);
}
