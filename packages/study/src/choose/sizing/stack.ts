import type { CatalogueElement, System, SystemFilter, SystemPart } from "@thirstline/spec/system";

/** Which side of the pump elements are searched for. */
export type Side = "suction" | "delivery";

/** A system with its filters on one side taken out, and where new ones go. */
export interface Stack {
  readonly side: Side;
  readonly before: readonly SystemPart[];
  readonly after: readonly SystemPart[];
  /** names of the filters that made way */
  readonly replaced: readonly string[];
  /** the system, its spreads left out: a search takes the middle of each */
  readonly system: System;
}

/** So many of one element side by side, one stage after another, with lines of one bore or the file's own. */
export interface Layout {
  readonly stages: readonly { readonly element: CatalogueElement; readonly count: number }[];
  readonly bore: number | null;
}

/**
 * Takes the filters on one side's path out, and with them every bank that holds one; new ones go where the first stood, or
 * at the end of a path that has none.
 */
export function stackOf(system: System, side: Side): Stack {
  const path = (side === "suction" ? system.suction : system.delivery) ?? [];
  const first = path.findIndex(holdsFilter);
  const at = first === -1 ? path.length : first;
  const { spreads: _, ...rest } = system;
  return {
    side,
    before: path.slice(0, at),
    after: path.slice(at).filter((part) => !holdsFilter(part)),
    replaced: path.filter(holdsFilter).flatMap(namesIn),
    system: rest,
  };
}

/** Whether a part is a filter or a bank with one in it. */
export function holdsFilter(part: SystemPart): boolean {
  return part.part === "filter" || (part.part === "bank" && part.branches.some((branch) => branch.some(holdsFilter)));
}

function namesIn(part: SystemPart): string[] {
  if (part.part === "filter") return [part.name];
  return part.part === "bank" ? part.branches.flatMap((branch) => branch.flatMap(namesIn)) : [];
}

/** Name of one element of a stage, counted from 1; no file of a person has such names. */
export function stageName(stage: number, branch: number): string {
  return `stage ${stage} · ${branch}`;
}

/** The system with an arrangement in place. */
export function arranged(stack: Stack, { stages, bore }: Layout): System {
  return withParts(
    stack,
    stages.map(({ element, count }, at) => stageOf(element.filter, at + 1, count)),
    bore,
  );
}

/** The system with other parts in the stack's place. */
export function withParts(stack: Stack, parts: readonly SystemPart[], bore: number | null): System {
  const path = [...stack.before, ...parts, ...stack.after].map((part) => bored(part, bore));
  return { ...stack.system, [stack.side]: path };
}

function stageOf(filter: SystemFilter, stage: number, count: number): SystemPart {
  const one = (branch: number): SystemFilter => ({ ...filter, name: stageName(stage, branch) });
  if (count === 1) return one(1);
  const branches = Array.from({ length: count }, (_, at) => [one(at + 1)]);
  return { part: "bank", name: `stage ${stage}`, branches };
}

function bored(part: SystemPart, bore: number | null): SystemPart {
  return bore !== null && (part.part === "line" || part.part === "fitting") ? { ...part, bore } : part;
}
