import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { query, state } from "lit/decorators.js";
import { drawingStyles } from "../drawingStyles.js";

/** Width on paper, px. */
const PAPER_WIDTH = 750;

/** A drawing that is made again for the width it has, and for paper at once. */
export abstract class LessonDrawing extends LitElement {
  static override styles = [drawingStyles, css`:host { display: block; }`];
  @state() private width = 0;
  private paper = false;
  /** As wide as the element and without height, so that watching it does not answer to what is drawn. */
  @query(".ruler") private readonly ruler!: HTMLElement | null;
  private readonly watcher = new ResizeObserver(([entry]) => {
    this.width = Math.floor(entry?.contentRect.width ?? 0);
  });

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.ruler) this.watcher.observe(this.ruler);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watcher.disconnect();
  }

  protected override firstUpdated(): void {
    if (this.ruler) this.watcher.observe(this.ruler);
  }

  override render(): TemplateResult {
    const width = this.paper ? PAPER_WIDTH : this.width;
    return html`<div class="ruler"></div>${width < 160 ? nothing : this.drawn(width, this.paper)}`;
  }

  /** Draws for paper or for the screen, at once: a browser that prints does not wait. */
  toPaper(paper: boolean): void {
    this.paper = paper;
    this.requestUpdate();
    this.performUpdate();
  }

  protected abstract drawn(width: number, paper: boolean): TemplateResult;
}
