import type { ReactiveController } from "lit";
import type { Draggable, Dragged, DragHost } from "./Dragged.js";
import { nearestSpot } from "./dropSpots.js";

/** A mouse moves a part once it has gone so far, px; a finger once it has lain still for so long, ms. */
const STIR = 5;
const HOLD = 350;
/** A finger that goes further than this before, px, scrolls the page. */
const SCROLL = 10;
/** How near a spot has to be, px. */
const REACH = 110;
/** Near the window's edge, px, the page moves along. */
const EDGE = 70;

/** Drags a part along the path by mouse or finger. Escape, or letting go away from any spot, leaves all as it is. */
export class PartDrag implements ReactiveController {
  now: Dragged | null = null;
  private readonly host: DragHost & HTMLElement;
  private part: Draggable | null = null;
  private pointer = -1;
  private from: readonly [number, number] = [0, 0];
  private last: readonly [number, number] = [0, 0];
  private hold: ReturnType<typeof setTimeout> | undefined;

  constructor(host: DragHost & HTMLElement) {
    this.host = host;
    host.addController(this);
  }

  hostConnected(): void {
    // Not passive: a finger that drags a part must not scroll the page.
    this.host.addEventListener("touchmove", this.onTouch, { passive: false });
    this.host.addEventListener("contextmenu", this.onMenu);
  }

  hostDisconnected(): void {
    this.host.removeEventListener("touchmove", this.onTouch);
    this.host.removeEventListener("contextmenu", this.onMenu);
    this.end();
  }

  /** A pointer went down on a part. */
  press(event: PointerEvent, part: Draggable): void {
    if (event.button !== 0 || !event.isPrimary || this.part !== null) return;
    this.part = part;
    this.pointer = event.pointerId;
    this.from = [event.clientX, event.clientY];
    this.last = this.from;
    if (event.pointerType === "touch") this.hold = setTimeout(() => this.begin(), HOLD);
    addEventListener("pointermove", this.onMove);
    addEventListener("pointerup", this.onUp);
    addEventListener("pointercancel", this.onCancel);
    addEventListener("keydown", this.onKey, { capture: true });
  }

  private readonly onMove = (event: PointerEvent): void => {
    if (event.pointerId !== this.pointer) return;
    this.last = [event.clientX, event.clientY];
    const gone = Math.hypot(event.clientX - this.from[0], event.clientY - this.from[1]);
    if (this.now !== null) this.follow();
    else if (event.pointerType === "touch") {
      if (gone > SCROLL) this.end();
    } else if (gone > STIR) this.begin();
  };

  private begin(): void {
    const { part } = this;
    const spots = part === null ? [] : this.host.spotsFor(part.place);
    if (part === null || spots.length === 0) {
      this.end();
      return;
    }
    this.now = { ...part, spots, over: null, x: 0, y: 0 };
    this.follow();
    this.moveAlong();
  }

  private follow(): void {
    if (this.now === null) return;
    const [x, y] = this.host.onDrawing(...this.last);
    this.now = { ...this.now, x, y, over: nearestSpot(this.now.spots, x, y, REACH) };
    this.host.requestUpdate();
  }

  /** Moves the page while the pointer is near the window's edge. */
  private readonly moveAlong = (): void => {
    if (this.now === null) return;
    const [, y] = this.last;
    const by = y < EDGE ? y - EDGE : y > innerHeight - EDGE ? y - innerHeight + EDGE : 0;
    if (by !== 0) {
      scrollBy(0, by / 5);
      this.follow();
    }
    requestAnimationFrame(this.moveAlong);
  };

  private readonly onUp = (event: PointerEvent): void => {
    if (event.pointerId !== this.pointer) return;
    const { now } = this;
    this.end();
    if (now === null) return;
    // What the browser makes of the press is no click on the part.
    const swallow = (click: Event) => {
      click.stopPropagation();
      click.preventDefault();
    };
    addEventListener("click", swallow, { capture: true, once: true });
    setTimeout(() => removeEventListener("click", swallow, { capture: true }));
    if (now.over !== null) this.host.letGo(now, now.over);
  };

  private readonly onCancel = ({ pointerId }: PointerEvent): void => {
    if (pointerId === this.pointer) this.end();
  };

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" || this.now === null) return;
    event.stopPropagation();
    this.end();
  };

  private readonly onTouch = (event: Event): void => {
    if (this.now !== null && event.cancelable) event.preventDefault();
  };

  private readonly onMenu = (event: Event): void => {
    // A finger that lies still would bring up the browser's own menu.
    if (this.part !== null) event.preventDefault();
  };

  private end(): void {
    clearTimeout(this.hold);
    removeEventListener("pointermove", this.onMove);
    removeEventListener("pointerup", this.onUp);
    removeEventListener("pointercancel", this.onCancel);
    removeEventListener("keydown", this.onKey, { capture: true });
    this.part = null;
    this.pointer = -1;
    if (this.now === null) return;
    this.now = null;
    this.host.requestUpdate();
  }
}
