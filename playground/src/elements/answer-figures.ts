import {
  bandText,
  type CheckAnswer,
  type CheckPoint,
  limitName,
  quantity,
  sideWords,
  type UnitSystem,
} from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { figureCell } from "../working/figureButton.js";
import { whyStyles } from "../working/whyStyles.js";

/** The figures behind the sentence: vacuum, feed pressure, ceiling, what is in hand, what the fuel is like. */
@customElement("answer-figures")
export class AnswerFigures extends LitElement {
  static override styles = [
    whyStyles,
    css`
    dl { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(11.4rem, 100%), 1fr)); gap: 0 32px; margin: 0; }
    div { border-top: 1px solid var(--rule); padding: 8px 0 12px; }
    dt { font-size: 0.86rem; color: var(--soft); }
    dd { margin: 0; font-size: 1.25rem; line-height: 1.3; font-weight: 600; }
    small { display: block; font-size: 0.86rem; font-weight: 400; color: var(--soft); line-height: 1.35; }
    .over { color: var(--limit); }
    dd button.figure.why { font-weight: inherit; }
  `,
  ];
  @property({ attribute: false }) answer!: CheckAnswer;
  @property({ attribute: false }) point!: CheckPoint;
  @property() units: UnitSystem = "metric";

  override render() {
    const { point, answer } = this;
    const inlet = sideWords(answer.pump).inlet;
    const feed = sideWords(answer.pump).feed;
    return html`<dl>
      ${answer.pump === "none" ? nothing : this.row(`Vacuum ${inlet}, clean`, "vacuum", bandText(point.vacuum, "vacuum", this.units), this.limits())}
      ${point.vacuumNow ? this.row(`Vacuum ${inlet}, as it is now`, "vacuum now", bandText(point.vacuumNow, "vacuum", this.units)) : nothing}
      ${point.feedPressure ? this.row(`Pressure ${feed}`, "feed pressure", bandText(point.feedPressure, "pressure", this.units), this.feedLimit()) : nothing}
      ${this.row("Supply ceiling", "ceiling at change", this.ceiling(), this.binding())}
      ${this.row("In hand", "in hand, low end", this.inHand(), "ceiling over demand, less one; at the bad end of what is known")}
      ${point.riseFree ? this.row("Rise still free for soil", "free for soil", this.free(), "before the vacuum limit at change") : nothing}
      ${this.row(point.fuel.name, "fuel viscosity", quantity(point.fuel.kinematicViscosity, "viscosity", this.units), this.fuel())}
    </dl>`;
  }

  private row(name: string, figure: string, text: string, more = ""): TemplateResult {
    return html`<div><dt>${name}</dt><dd>${figureCell(text, { figure, asked: {} })}${more === "" ? nothing : html`<small>${more}</small>`}</dd></div>`;
  }

  private limits(): string {
    const { clean, atChange } = this.point.vacuumLimits;
    const shown = (value: number) => quantity(value, "vacuum", this.units);
    if (clean === null && atChange === null) return "no limit is given";
    if (clean === null) return `at most ${shown(atChange ?? 0)}`;
    return `at most ${shown(clean)} clean, ${shown(atChange ?? clean)} at change`;
  }

  private feedLimit(): string {
    return this.point.feedLimit > 0
      ? `at least ${quantity(this.point.feedLimit, "pressure", this.units)}`
      : "no least is stated";
  }

  private ceiling(): string {
    return bandText(this.point.ceilings.atChange.flow, "flow", this.units);
  }

  private binding(): string {
    const { demand, ceilings } = this.point;
    return `where ${limitName(ceilings.atChange.limit, this.answer.pump)} binds; the demand is ${quantity(demand.total, "flow", this.units)}`;
  }

  private inHand(): string {
    return quantity(this.point.inHand.low, "ratio", this.units);
  }

  private free(): string {
    const { riseFree } = this.point;
    if (riseFree === null) return "";
    return riseFree.high <= 0 ? "none" : bandText(riseFree, "vacuum", this.units);
  }

  private fuel(): string {
    const { density, cloudPoint } = this.point.fuel;
    const cloud =
      cloudPoint === null ? "cloud point not given" : `cloud point ${quantity(cloudPoint, "temperature", this.units)}`;
    return `${quantity(density, "density", this.units)}, ${cloud}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "answer-figures": AnswerFigures;
  }
}
