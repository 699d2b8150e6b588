import type { LitElement, ReactiveController } from "lit";
import uPlot from "uplot";
import type { ChartData } from "./ChartData.js";
import { inksOf } from "./inksOf.js";
import { PlotPlace } from "./PlotPlace.js";
import { NARROW, plotColumns, plotOptions } from "./plotOptions.js";

/** What changes the page's colours. */
const repainters = ["(prefers-color-scheme: dark)", "(prefers-contrast: more)", "(forced-colors: active)", "print"];

/** How long a plot out of sight waits for the figures to come to rest, ms. */
const CALM = 200;

/**
 * Keeps a plot in an element: made when the element is there, given its figures after every change, made anew where its
 * lines, its words or the page's colours differ, and let go with the element.
 */
export class PlotController implements ReactiveController {
  /** Where it is read. */
  readonly reads = new PlotPlace(() => {
    this.placeCursor();
    this.host.requestUpdate();
  });
  /** Whether the cursor is being put where it is kept, which is no pointer's doing. */
  private placing = false;
  private readonly host: LitElement;
  private readonly place: () => HTMLElement | null;
  private readonly height: number;
  private data: ChartData | null = null;
  private plot: uPlot | null = null;
  private form = "";
  /** Whether the host is on the screen; a plot elsewhere waits until nothing moves. */
  near = true;
  private later: ReturnType<typeof setTimeout> | undefined;
  private readonly queries = repainters.map((one) => matchMedia(one));
  private readonly watcher = new ResizeObserver(() => this.fit());
  private readonly sight = new IntersectionObserver(([entry]) => this.onSight(entry?.isIntersecting ?? true));

  /** @param place where the plot stands in the host once it is rendered */
  constructor(host: LitElement, place: () => HTMLElement | null, height: number) {
    this.host = host;
    this.place = place;
    this.height = height;
    host.addController(this);
  }

  /** Index of the figures that are read; null for at rest. */
  get pointer(): number | null {
    return this.reads.at(this.last);
  }

  /** Index of the last figures there are. */
  get last(): number {
    return (this.data?.x.values.length ?? 1) - 1;
  }

  hostConnected(): void {
    for (const one of this.queries) one.addEventListener("change", this.repaint);
    this.watcher.observe(this.host);
    this.sight.observe(this.host);
  }

  hostDisconnected(): void {
    for (const one of this.queries) one.removeEventListener("change", this.repaint);
    this.watcher.disconnect();
    this.sight.disconnect();
    this.clear();
  }

  /** Draws figures; to be called when the host has been updated. */
  draw(data: ChartData): void {
    this.data = data;
    const place = this.place();
    if (place === null || data.lines.length === 0) {
      this.clear();
      return;
    }
    // One that is there has been fitted to its place; to ask again would lay the page out in between.
    const width = this.plot?.width ?? Math.max(place.clientWidth, 100);
    const lines = data.lines.map(({ look, label, band }) => [look, label, band !== null]);
    const form = JSON.stringify([lines, data.x.label, data.x.symbol, data.y.label, data.y.symbol, width < NARROW]);
    if (this.plot?.root.isConnected && this.form === form) {
      clearTimeout(this.later);
      if (this.near) this.plot.setData(plotColumns(data));
      else this.later = setTimeout(() => this.plot?.setData(plotColumns(data)), CALM);
      this.placeCursor();
      return;
    }
    this.clear();
    this.form = form;
    const options = plotOptions(() => this.data ?? data, inksOf(this.host), { width, height: this.height });
    const hooks = { ...options.hooks, setCursor: [(plot: uPlot) => this.onCursor(plot)] };
    this.plot = new uPlot({ ...options, hooks }, plotColumns(data), place);
    this.placeCursor();
  }

  private clear(): void {
    clearTimeout(this.later); // what it holds has the lines of this plot, not of the next
    this.plot?.destroy();
    this.plot = null;
    this.form = "";
  }

  private readonly repaint = (): void => {
    this.clear();
    if (this.data) this.draw(this.data);
  };

  private onSight(near: boolean): void {
    this.near = near;
    if (near && this.data) this.draw(this.data);
  }

  private fit(): void {
    const width = this.place()?.clientWidth ?? 0;
    if (!this.plot || width <= 0 || Math.abs(this.plot.width - width) <= 1) return;
    // Another set of axes where it gets narrow.
    if (width < NARROW !== this.plot.width < NARROW) this.repaint();
    else this.plot.setSize({ width, height: this.height });
  }

  /** Shows where what is read is kept. */
  private placeCursor(): void {
    const { plot, pointer, data } = this;
    if (!plot || this.reads.under !== null) return;
    const x = pointer === null ? undefined : data?.x.values[pointer];
    this.placing = true;
    plot.setCursor(x === undefined ? { left: -10, top: -10 } : { left: plot.valToPos(x, "x"), top: 0 });
    this.placing = false;
  }

  private onCursor({ cursor }: uPlot): void {
    if (this.placing) return;
    const inside = (cursor.left ?? -1) >= 0;
    const now = inside ? (cursor.idx ?? null) : null;
    if (now === this.reads.under) return;
    this.reads.under = now;
    if (!inside) this.placeCursor();
    this.host.requestUpdate();
  }
}
