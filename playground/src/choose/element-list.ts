import type { CatalogueElement } from "@thirstline/spec/system";
import { moneyText } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { controlStyles } from "../look/sheetStyles.js";
import { chooseStyles } from "./chooseStyles.js";
import { finenessOf, soughtOf } from "./elementWords.js";

/** Rows shown at a time: a list of thousands would only be scrolled past. */
const SHOWN = 60;

/** Says which element was picked. */
class PickEvent extends Event {
  readonly element: CatalogueElement;

  constructor(element: CatalogueElement) {
    super("element-pick");
    this.element = element;
  }
}

/**
 * The elements of a catalogue, to be looked through by name, style, thread and fineness, and one to be picked.
 * @fires element-pick
 */
@customElement("element-list")
export class ElementList extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    css`
    .search { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 8px; }
    .search label { font-size: 0.86rem; color: var(--soft); }
    .search select { width: auto; max-width: 9rem; display: block; }
    .list { max-height: min(26rem, 60vh); overflow-y: auto; border: 1px solid var(--rule); border-radius: 4px; background: var(--raised); margin-top: 8px; }
    .one { position: relative; display: grid; grid-template-columns: auto minmax(0, 1fr) auto; gap: 0 12px; align-items: center; padding: 6px 12px; cursor: pointer; min-height: 44px; box-sizing: border-box; }
    .one + .one { border-top: 1px solid var(--rule); }
    .one input { accent-color: var(--fuel); width: 18px; height: 18px; margin: 0; }
    .one:has(input:checked) { background: var(--wash); }
    .one b { font-weight: 650; }
    .one small { display: block; font-size: 0.86rem; color: var(--soft); line-height: 1.3; }
    .one .now { color: var(--fuel); font-weight: 650; }
    .one:has(input:checked) small { color: var(--ink); }
    .price { text-align: right; }
    .more { padding: 8px 12px; border-top: 1px solid var(--rule); }
    p { margin-top: 6px; }
  `,
  ];
  @property({ attribute: false }) elements: readonly CatalogueElement[] = [];
  @property({ attribute: false }) picked: CatalogueElement | null = null;
  /** The one that is fitted now, where it is known. */
  @property({ attribute: false }) fitted: CatalogueElement | null = null;
  @state() private sought = "";
  @state() private kind = "";
  @state() private most = SHOWN;

  override render() {
    const styles = [...new Set(this.elements.flatMap(({ filter }) => filter.style ?? []))];
    const found = this.found();
    return html`<div class="search">
        <label>Look for a name, a thread or a fineness<input type="search" .value=${this.sought} @input=${this.onSearch} /></label>
        ${
          styles.length < 2
            ? nothing
            : html`<label>Style<select @change=${this.onStyle}><option value="">any</option>
            ${styles.map((one) => html`<option value=${one} .selected=${one === this.kind}>${one}</option>`)}</select></label>`
        }
      </div>
      <p class="quiet" role="status">${this.count(found.length)}</p>
      ${
        found.length === 0
          ? nothing
          : html`<div class="list" role="radiogroup" aria-label="Elements">
        ${repeat(
          found.slice(0, this.most),
          ({ name }) => name,
          (one) => this.row(one),
        )}
        ${found.length <= this.most ? nothing : html`<div class="more"><button type="button" @click=${this.onMore}>Show ${Math.min(SHOWN, found.length - this.most)} more</button></div>`}
      </div>`
      }`;
  }

  private row(element: CatalogueElement) {
    const { name, filter, price } = element;
    const words = [filter.style, filter.thread, finenessOf(element)].filter(
      (word) => word !== undefined && word !== "",
    );
    return html`<label class="one"><input type="radio" name="element" .checked=${name === this.picked?.name} @change=${() => this.pick(element)} />
      <span><b>${name}</b>${name === this.fitted?.name ? html` <small class="now">fitted now</small>` : nothing}
        <small>${words.join(", ")}</small></span>
      <span class="price">${price === undefined ? "" : moneyText(price)}</span></label>`;
  }

  private count(found: number): string {
    const all = this.elements.length;
    if (found === 0) return "None is like that. Look for less.";
    return found === all ? `${all} elements` : `${found} of ${all} elements`;
  }

  /** Every word looked for must be somewhere in what is known of an element. */
  private found(): readonly CatalogueElement[] {
    const words = this.sought.toLowerCase().split(/\s+/).filter(Boolean);
    if (words.length === 0 && this.kind === "") return this.elements;
    return this.elements.filter((element) => {
      if (this.kind !== "" && element.filter.style !== this.kind) return false;
      const sought = soughtOf(element);
      return words.every((word) => sought.includes(word));
    });
  }

  private onSearch(event: Event): void {
    this.sought = (event.target as HTMLInputElement).value;
    this.most = SHOWN;
  }

  private onStyle(event: Event): void {
    this.kind = (event.target as HTMLSelectElement).value;
    this.most = SHOWN;
  }

  private onMore(): void {
    this.most += SHOWN;
  }

  private pick(element: CatalogueElement): void {
    this.dispatchEvent(new PickEvent(element));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "element-list": ElementList;
  }
  interface HTMLElementEventMap {
    "element-pick": PickEvent;
  }
}
