import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from "lit";
import { createRef, ref } from "lit/directives/ref.js";

/** Knows how wide a place in an element is, and has the element drawn again when that changes. */
export class WidthController implements ReactiveController {
  /** px; 0 until it is known. */
  width = 0;
  private readonly host: ReactiveControllerHost;
  private readonly place = createRef();
  private watched: Element | null = null;
  private readonly watcher = new ResizeObserver(([entry]) => {
    const now = Math.floor(entry?.contentRect.width ?? 0);
    if (now === this.width) return;
    this.width = now;
    this.host.requestUpdate();
  });

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  /** To be put where the width is wanted: as wide as its place and without height, so that watching it does not answer to what is drawn. */
  ruler(): TemplateResult {
    return html`<div ${ref(this.place)}></div>`;
  }

  hostConnected(): void {
    this.host.requestUpdate();
  }

  hostUpdated(): void {
    const place = this.place.value ?? null;
    if (place === this.watched) return;
    this.watcher.disconnect();
    this.watched = place;
    if (place) this.watcher.observe(place);
  }

  hostDisconnected(): void {
    this.watcher.disconnect();
    this.watched = null;
  }
}
