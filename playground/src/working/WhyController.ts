import type { System } from "@thirstline/spec/system";
import type { UnitSystem } from "@thirstline/study";
import type { Leaf } from "@thirstline/study/working";
import { html, type LitElement, nothing, type ReactiveController, type TemplateResult } from "lit";
import type { Chosen } from "../model/Place.js";
import type { MarkEvent } from "./MarkEvent.js";
import { placeOfPart } from "./placeOfPart.js";

/** From this width on the panel stands beside the sheet. */
const BESIDE = "(min-width: 1100px)";
/** Share of the height that surely stays above a panel along the bottom. */
const ABOVE = 0.36;

/** Opens the working of a figure beside the page when it is asked for, and closes it again. */
export class WhyController implements ReactiveController {
  /** The part of the system that is spoken of; null for none. */
  marked: Chosen | null = null;
  private readonly host: LitElement;
  private leaf: Leaf | null = null;
  private opener: HTMLElement | null = null;

  constructor(host: LitElement) {
    this.host = host;
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener("keydown", this.onKey, { capture: true });
  }

  hostDisconnected(): void {
    removeEventListener("keydown", this.onKey, { capture: true });
  }

  /** Opens the working of a figure; the keyboard comes back to `opener`. */
  async open(leaf: Leaf, opener: EventTarget | undefined): Promise<void> {
    this.opener = opener instanceof HTMLElement ? opener : null;
    // An object of its own, so that the same figure opened again is opened anew.
    this.leaf = { ...leaf };
    this.host.toggleAttribute("beside", true);
    this.host.requestUpdate();
    await this.host.updateComplete;
    this.opener?.scrollIntoView({ block: "nearest" });
    this.clearPanel();
  }

  /** Where the panel lies along the bottom, the figure is to stay in sight above it. */
  private clearPanel(): void {
    if (matchMedia(BESIDE).matches || this.opener === null) return;
    const hidden = this.opener.getBoundingClientRect().bottom - innerHeight * ABOVE;
    if (hidden > 0) scrollBy(0, hidden);
  }

  /** The panel, where one is open. */
  panel(system: System, units: UnitSystem, away: boolean): TemplateResult | typeof nothing {
    if (this.leaf === null) return nothing;
    return html`<working-panel class="no-print" .system=${system} .leaf=${this.leaf} .units=${units} ?away=${away}
      @working-close=${this.close} @part-marked=${this.onMark}></working-panel>`;
  }

  private readonly close = async (): Promise<void> => {
    this.leaf = null;
    this.marked = null;
    this.host.toggleAttribute("beside", false);
    this.host.requestUpdate();
    await this.host.updateComplete;
    this.opener?.focus();
    this.opener = null;
  };

  private readonly onMark = ({ part }: MarkEvent): void => {
    this.marked = part && placeOfPart(part);
    this.host.requestUpdate();
  };

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" || this.leaf === null) return;
    // Whatever else Escape would put away stays for the next one.
    event.stopImmediatePropagation();
    event.preventDefault();
    void this.close();
  };
}
