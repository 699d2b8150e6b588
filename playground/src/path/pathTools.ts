import type { System } from "@thirstline/spec/system";
import { moveTo } from "../edit/moveTo.js";
import { slotsFor } from "../edit/slots.js";
import type { Place } from "../model/Place.js";
import { type DropSpot, dropSpots } from "./dropSpots.js";
import type { Layout } from "./layout.js";
import type { Sketch } from "./sketch.js";

// What the path fetches once it is painted, to be added to and dragged by.
export { drawDrag } from "./drawDrag.js";
export { drawGaps } from "./drawGaps.js";
export { PartDrag } from "./PartDrag.js";
export { toolStyles } from "./toolStyles.js";

/** Where a part may go, and where on the drawing that is. */
export function spotsFor(system: System, place: Place, laid: Layout, drawn: Sketch): readonly DropSpot[] {
  return dropSpots(slotsFor(system, place), laid, drawn);
}

/** The change that puts a part where it was let go. */
export function moveChange(from: Place, to: Place): (system: System) => System {
  return (system) => moveTo(system, from, to).system;
}
