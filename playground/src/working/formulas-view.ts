import { type Formula, formulaTopics } from "@thirstline/study/working";
import { html, LitElement, type nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { formulaEntry } from "./formulaEntry.js";
import { formulaLink } from "./formulaLink.js";
import { isAbout } from "./formulaSearch.js";
import { formulasStyles } from "./formulasStyles.js";
import { mathsStyles } from "./typeset.js";

/** The formulas: each with its letters, where it holds, how far it may be wrong, where it comes from and what checks it. */
@customElement("formulas-view")
export class FormulasView extends LitElement {
  static override styles = [controlStyles, mathsStyles, formulasStyles];
  /** The formula or topic shown, by its name in the address; "" for the top. */
  @property() place = "";
  @state() private wanted = "";

  override render() {
    const shown = formulaTopics
      .map(({ topic, formulas }) => ({ topic, formulas: formulas.filter((one) => isAbout(one, topic, this.wanted)) }))
      .filter(({ formulas }) => formulas.length > 0);
    const count = shown.reduce((sum, { formulas }) => sum + formulas.length, 0);
    return html`<h2 tabindex="-1">The formulas</h2>
      <p class="lead">Everything Thirstline works out, it works out with these. Values go in in the units shown, all SI. Each
        formula is kept once, as it stands here: what you read is what is evaluated, units and all, and compared with the answers.</p>
      <search class="no-print"><label>Find a formula <input type="search" .value=${this.wanted} @input=${this.onInput}
        placeholder="a name, a letter, an author" /></label>
        <span role="status" class="quiet">${this.wanted === "" ? `${count} formulas` : `${count} found`}</span></search>
      <div class="two"><nav class="no-print" aria-label="Topics"><ol>${shown.map(
        ({ topic, formulas }) =>
          html`<li><a href=${formulaLink(topicId(topic))}>${topic}</a> <span class="quiet">${formulas.length}</span></li>`,
      )}</ol></nav>
      <div class="all">${count === 0 ? html`<p>No formula has “${this.wanted}” in it.</p>` : shown.map((one) => this.topic(one))}</div></div>
      <p class="no-print"><a href="licences.txt" target="_blank" rel="noopener">Licences of the works this page is made with</a></p>`;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has("place")) void this.toPlace();
  }

  private topic({
    topic,
    formulas,
  }: {
    readonly topic: string;
    readonly formulas: readonly Formula[];
  }): TemplateResult | typeof nothing {
    return html`<section aria-labelledby=${topicId(topic)}><h3 id=${topicId(topic)} tabindex="-1">${topic}</h3>
      ${formulas.map((one) => formulaEntry(one, one.id === this.place))}</section>`;
  }

  /** Brings what the address names to the top, with the keyboard on it. */
  private async toPlace(): Promise<void> {
    if (this.place === "") return;
    const there = () => this.renderRoot.querySelector<HTMLElement>(`#${CSS.escape(this.place)}`);
    if (there() === null && this.wanted !== "") {
      this.wanted = "";
      await this.updateComplete;
    }
    // After the page has gone to its top for another view.
    await new Promise((resolve) => setTimeout(resolve));
    there()?.scrollIntoView();
    const name = there();
    (name?.querySelector<HTMLElement>("h4") ?? name)?.focus({ preventScroll: true });
  }

  private onInput(event: Event): void {
    this.wanted = (event.target as HTMLInputElement).value;
  }
}

function topicId(topic: string): string {
  return topic.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-");
}

declare global {
  interface HTMLElementTagNameMap {
    "formulas-view": FormulasView;
  }
}
