import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { WidthController } from "../../model/WidthController.js";
import { drawingStyles } from "../drawingStyles.js";

/** Width on paper, px. */
const PAPER_WIDTH = 750;

/** A drawing that is made again for the width it has, and for paper at once. */
export abstract class LessonDrawing extends LitElement {
  static override styles = [drawingStyles, css`:host { display: block; }`];
  private paper = false;
  private readonly place = new WidthController(this);

  override render(): TemplateResult {
    const width = this.paper ? PAPER_WIDTH : this.place.width;
    return html`${this.place.ruler()}${width < 160 ? nothing : this.drawn(width, this.paper)}`;
  }

  /** Draws for paper or for the screen, at once: a browser that prints does not wait. */
  toPaper(paper: boolean): void {
    this.paper = paper;
    this.requestUpdate();
    this.performUpdate();
  }

  protected abstract drawn(width: number, paper: boolean): TemplateResult;
}
