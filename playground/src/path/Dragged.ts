import type { ReactiveControllerHost } from "lit";
import type { Place } from "../model/Place.js";
import type { DropSpot } from "./dropSpots.js";

/** What may be dragged. */
export interface Draggable {
  readonly place: Place;
  readonly name: string;
}

/** What a drag asks of the drawing. */
export interface DragHost extends ReactiveControllerHost {
  /** where the part may go, and where on the drawing */
  spotsFor(place: Place): readonly DropSpot[];
  /** a place in the window as one on the drawing, px */
  onDrawing(x: number, y: number): readonly [number, number];
  letGo(part: Draggable, spot: DropSpot): void;
}

/** A part that is being dragged. */
export interface Dragged extends Draggable {
  readonly spots: readonly DropSpot[];
  /** where it would be put; null where it would stay */
  readonly over: DropSpot | null;
  readonly x: number;
  readonly y: number;
}
