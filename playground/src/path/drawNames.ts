import { bandText, type CheckPoint, quantity, type UnitSystem } from "@thirstline/study";
import { html, nothing, type TemplateResult } from "lit";
import { ChooseEvent } from "../model/events.js";
import { type Chosen, keyOf } from "../model/Place.js";
import type { Laid, Layout } from "./layout.js";
import type { Item } from "./Station.js";
import type { Sketch } from "./sketch.js";

/** What the names say, and of which parts. */
interface Named {
  readonly point: CheckPoint;
  readonly units: UnitSystem;
  readonly chosen: Chosen | null;
  /** names of parts a caution is about */
  readonly cautioned: ReadonlySet<string>;
  /** whether they are only to be read */
  readonly still: boolean;
}

/** The parts' names with what each costs, beside their symbols; pressed, each asks the sheet to show its part, or none. */
export function drawNames(layout: Layout, drawn: Sketch, named: Named): TemplateResult[] {
  return layout.laid.map((one) => namesAt(one, layout.upright, drawn, named));
}

function namesAt({ station, from, to, middle, lanes }: Laid, upright: boolean, drawn: Sketch, named: Named) {
  const box = upright
    ? `top:${from + drawn.path.y}px;height:${to - from}px;left:${drawn.names.left}px;width:${drawn.names.width}px`
    : `left:${middle + drawn.path.x}px;width:${to - from - 6}px;top:${drawn.names.top}px`;
  const banked = station.branches.length > 0;
  const most = Math.max(...lanes.map((lane) => lane.length));
  // Across the page a branch is a row of names; down it they stand under one another.
  const columns = upright ? "none" : `repeat(${most}, minmax(0, 1fr))`;
  const rows = lanes.map((lane) => Array.from({ length: upright ? lane.length : most }, (_, at) => lane[at]?.item));
  return html`<li .style=${box}>
      ${nameOf(station.item, named, banked)}
      ${
        banked
          ? html`<div class="inside" .style=${`grid-template-columns:${columns}`}>
          ${rows.flat().map((item) => (item ? nameOf(item, named, false, true) : html`<span></span>`))}</div>`
          : nothing
      }
    </li>`;
}

function nameOf(item: Item, named: Named, isBank: boolean, inner = false): TemplateResult {
  const { chosen, cautioned, still } = named;
  const key = keyOf(item.chosen);
  const on = chosen !== null && keyOf(chosen) === key;
  if (isBank && item.shape.kind === "tank") return html`<span class="name">${item.name} ${cost(item, named)}</span>`;
  const figure = inner ? nothing : cost(item, named);
  if (still) {
    return html`<span class=${inner ? "name inner" : "name"}><span>${item.name}${countOf(item)}</span> ${figure}</span>`;
  }
  const warned = cautioned.has(item.name);
  const press = ({ currentTarget }: Event) => currentTarget?.dispatchEvent(new ChooseEvent(on ? null : item.chosen));
  return html`<button type="button" class=${inner ? "name inner" : "name"} data-key=${key} aria-pressed=${on ? "true" : "false"} @click=${press}>
      <span>${item.name}${countOf(item)}${warned ? html`\u00a0<b class="mark" title="see the cautions" aria-label="with a caution">!</b>` : nothing}</span>
      ${figure}
    </button>`;
}

function cost({ row, shape }: Item, { point, units }: Named): TemplateResult | typeof nothing {
  if (shape.kind === "pump") return html`<i>${bandText(point.vacuum, "vacuum", units)} of vacuum</i>`;
  if (row === null)
    return shape.kind === "engine" ? html`<i>${quantity(point.demand.total, "flow", units)}</i>` : nothing;
  if (row.drop === null) return html`<i>nothing flows</i>`;
  const size = quantity(Math.abs(row.drop), "pressure", units);
  const sign = Number.parseFloat(size) === 0 ? "" : row.drop < 0 ? "+" : "−";
  return html`<i class=${row.share >= 0.3 ? "big" : ""}>${sign}${size}</i>`;
}

function countOf({ shape }: Item): string {
  return shape.kind === "part" && shape.part.part === "fitting" && shape.part.count > 1 ? ` ×${shape.part.count}` : "";
}
