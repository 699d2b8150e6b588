import type { FleetPart } from "../../fleet/FleetAnswer.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { toOrder } from "../formulas/yardDays.js";
import { inWords, worked } from "../worked.js";

/** Figures of a part to have on the shelf. */
export function partFigures({ part, count, onHand, delivery }: FleetPart): FigureMaker[] {
  const plain = { unit: "1", kind: "plain" } as const;
  const due = () =>
    inWords("counted over all machines, each change in the days looked ahead; what is past due is changed today", {
      name: `${part} due`,
      value: count,
      ...plain,
    });
  const held = () =>
    inWords(onHand === null ? "the shelf does not say, which counts as none" : "the shelf", {
      name: `${part} on hand`,
      value: onHand ?? 0,
      ...plain,
    });
  const group = "Parts to have";
  return [
    { group, name: "parts due", make: due },
    { group, name: "parts on hand", make: () => (onHand === null ? null : held()) },
    { group, name: "parts to order", make: () => worked(toOrder, { n: due(), h: held() }) },
    {
      group,
      name: "delivery time",
      make: () =>
        delivery === null
          ? null
          : inWords("the shelf", { name: "delivery time", value: delivery, unit: "s", kind: "running time" }),
    },
  ];
}
