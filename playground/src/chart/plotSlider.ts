import { html, type TemplateResult } from "lit";
import type { ChartData } from "./ChartData.js";
import { nearest } from "./nearest.js";
import type { PlotController } from "./PlotController.js";
import { readingsOf } from "./readingsOf.js";

/** Where a plot stands in its host: the keys go along it, and what it reads there is said. */
export function plotSlider(plot: PlotController, data: ChartData, label: string): TemplateResult {
  const { values } = data.x;
  const rest = nearest(values, data.dot?.x ?? values.at(-1) ?? 0);
  const read = readingsOf(data, plot.pointer).map((one) => `${one.label} ${one.value}`);
  return html`<div id="plot" role="slider" tabindex="0" aria-label=${`${label}; the keys go along it`} aria-valuemin="0"
    aria-valuemax=${values.length - 1} aria-valuenow=${plot.pointer ?? rest} aria-valuetext=${read.join(", ")}
    @click=${plot.reads.onPress} @keydown=${(event: KeyboardEvent) => plot.reads.onKey(event, rest, plot.last)}></div>`;
}

/** Where the readings are taken, in words; `rest` is said of a plot nobody points at. */
export function placeWords(plot: PlotController, rest: string): string {
  if (plot.pointer === null) return rest;
  return plot.reads.isKept ? "Kept here; Escape or a press lets go" : "At the pointer; a press keeps it there";
}
