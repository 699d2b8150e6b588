import type { LeafRow } from "./Leaf.js";
import { remarkRows } from "./remarkLeaves.js";

/** Figures of what matters of a check at one temperature. */
export function choicePoint(place: string): LeafRow[] {
  return [
    [`${place}.temperature`, "temperature"],
    ...remarkRows(`${place}.reasons`),
    [`${place}.vacuum.middle`, "vacuum"],
    [`${place}.feedPressure.middle`, "feed pressure"],
    [`${place}.inHand.middle`, "in hand"],
  ];
}
