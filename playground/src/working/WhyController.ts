import type { System } from "@thirstline/spec/system";
import type { UnitSystem } from "@thirstline/study";
import type { Leaf } from "@thirstline/study/working";
import { html, type LitElement, nothing, type ReactiveController, type TemplateResult } from "lit";
import type { Chosen } from "../model/Place.js";
import type { MarkEvent } from "./MarkEvent.js";
import { placeOfPart } from "./placeOfPart.js";
import type { Subject } from "./Question.js";
import type { WhyEvent } from "./WhyEvent.js";

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
  /** What it is of, where that is not the system on the sheet. */
  private subject: Subject | null = null;
  /** The view it stands in, and its address. */
  private home = { view: "", address: "" };
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

  /** Opens the working of a figure that stands in a view; the keyboard comes back to `opener`. */
  async open({ leaf, subject }: WhyEvent, opener: EventTarget | undefined, view: string): Promise<void> {
    this.opener = opener instanceof HTMLElement ? opener : null;
    this.subject = subject;
    this.marked = null;
    this.home = { view, address: view === "sheet" ? "#sheet" : location.hash };
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

  /** The panel, where one is open, beside a view that is shown. */
  panel(system: System, units: UnitSystem, view: string): TemplateResult | typeof nothing {
    const { leaf, subject, home } = this;
    if (leaf === null) return nothing;
    const about = subject?.about ?? "";
    return html`<working-panel class="no-print" .source=${subject?.source ?? system} .leaf=${leaf} .units=${units}
      .about=${typeof about === "string" ? about : about(leaf.of ?? "now")} .back=${view === home.view ? "" : home.address}
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
    // What is drawn is the system on the sheet; others have their parts elsewhere.
    this.marked = part && !this.subject?.source ? placeOfPart(part) : null;
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
