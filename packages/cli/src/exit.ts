import type { CardAnswer, FleetEntry, GaugeAnswer, LifeAnswer, SwapVerdict, Verdict } from "@thirstline/study";

/** Exit codes: what a script sees of an answer. */
export const exit = { yes: 0, no: 1, fault: 2, care: 3, cannotSay: 4 } as const;

/** One of them. */
export type Exit = (typeof exit)[keyof typeof exit];

/** The worst first: a fault in the input beats a no, a no beats not knowing. */
const WORST_FIRST: readonly Exit[] = [exit.fault, exit.no, exit.cannotSay, exit.care, exit.yes];

/** Of several answers, the code that counts. */
export function worst(codes: readonly Exit[]): Exit {
  return WORST_FIRST.find((code) => codes.includes(code)) ?? exit.yes;
}

/** A verdict's code. */
export const verdictExit: Readonly<Record<Verdict, Exit>> = {
  holds: exit.yes,
  tight: exit.care,
  starves: exit.no,
  "cannot say": exit.cannotSay,
};

/** A life's code. */
export const lifeExit: Readonly<Record<LifeAnswer["verdict"], Exit>> = {
  lasts: exit.yes,
  early: exit.no,
  "cannot say": exit.cannotSay,
};

/** A swap's code. */
export const swapExit: Readonly<Record<SwapVerdict, Exit>> = {
  yes: exit.yes,
  "with care": exit.care,
  no: exit.no,
  "cannot say": exit.cannotSay,
};

/** A card's code. */
export const cardExit: Readonly<Record<CardAnswer["verdict"], Exit>> = { card: exit.yes, "cannot say": exit.cannotSay };

/** The code of a machine of a fleet; that nothing can be said of a mere nuisance matters to nobody. */
export function fleetExit({ group, stakes }: Pick<FleetEntry, "group" | "stakes">): Exit {
  if (group === "late" || group === "now") return exit.no;
  if (group === "cannot say") return stakes === "a nuisance" ? exit.yes : exit.cannotSay;
  return group === "later" ? exit.yes : exit.care;
}

/** A gauge's code: what is named is an answer, be it the filter or not. */
export const gaugeExit: Readonly<Record<GaugeAnswer["verdict"], Exit>> = {
  filter: exit.yes,
  other: exit.yes,
  "cannot tell": exit.cannotSay,
};
