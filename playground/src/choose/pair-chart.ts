import type { System } from "@thirstline/spec/system";
import { quantity, type UnitSystem, unitOf } from "@thirstline/study";
import { css, html, LitElement, nothing, svg } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { WidthController } from "../model/WidthController.js";
import { type Pair, pairOf } from "./pairOf.js";
import { scaleOf, ticksBetween } from "./plotScale.js";
import { plotStyles } from "./plotStyles.js";

const HEIGHT = 300;
const ROOM = { top: 24, right: 8, bottom: 46, left: 44 };

/** What both draw against demand at the coldest, with clean elements. */
@customElement("pair-chart")
export class PairChart extends LitElement {
  static override styles = [
    controlStyles,
    plotStyles,
    css`:host { display: block; min-width: 0; } p { margin: 0 0 8px; }`,
  ];
  @property({ attribute: false }) fitted!: System;
  @property({ attribute: false }) other!: System;
  /** K */
  @property({ attribute: false }) temperature = 288.15;
  @property({ attribute: false }) names: readonly [string, string] = ["", ""];
  @property({ attribute: false }) units: UnitSystem = "metric";
  private readonly place = new WidthController(this);
  private pair: Pair | null = null;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (["fitted", "other", "temperature"].some((key) => changed.has(key))) {
      this.pair = pairOf(this.fitted, this.other, this.temperature);
    }
  }

  override render() {
    const { pair } = this;
    if (pair === null) return nothing;
    const what = pair.kind === "vacuum" ? "Vacuum at the pump" : "Pressure at the engine";
    const at = quantity(this.temperature, "temperature", this.units);
    return html`<h2>${what} at ${at}, clean</h2>${this.place.ruler()}${this.place.width === 0 ? nothing : this.drawing(pair, this.place.width)}`;
  }

  private drawing(pair: Pair, width: number) {
    const { units } = this;
    const flow = unitOf("flow", units);
    const unit = unitOf(pair.kind, units);
    const [now, then] = pair.lines;
    const last = (now.demand.at(-1) ?? 1) / flow.size;
    const shown = (value: number) => value / unit.size;
    const values = [...now.value, ...then.value, ...pair.limits.map(({ value }) => value), 0]
      .filter(Number.isFinite)
      .map(shown);
    const highest =
      pair.limits.length > 0 ? Math.max(...pair.limits.map(({ value }) => shown(value))) * 1.35 : Infinity;
    const [low, high] = [Math.min(...values), Math.min(Math.max(...values), Math.max(highest, 0.001))];
    const x = scaleOf(0, last, ROOM.left, width - ROOM.right);
    const y = scaleOf(low, high, HEIGHT - ROOM.bottom, ROOM.top);
    // What runs off the top is cut there: beyond the limits it is of no use.
    const spotsOf = ({ demand, value }: Pair["lines"][0]): Spot[] =>
      [...demand].flatMap((one, at) => {
        const own = shown(value[at] ?? Number.NaN);
        return Number.isFinite(own) && own <= high * 1.02 ? [{ x: x(one / flow.size), y: y(own) }] : [];
      });
    const drawn = [spotsOf(now), spotsOf(then)] as const;
    const demand = x(pair.demand / flow.size);
    const here = this.names.map((name, at) => ({ name, at }));
    const upper = valueAt(then, pair.demand) >= valueAt(now, pair.demand) ? 1 : 0;
    const words = here
      .map(
        ({ name, at }) =>
          `${name}: ${quantity(valueAt(pair.lines[at as 0 | 1], pair.demand), pair.kind, units)} at the engine's demand`,
      )
      .join("; ");
    return html`<svg viewBox=${`0 0 ${width} ${HEIGHT}`} role="img" aria-label=${`${words}. The figures stand in the table above.`}>
      ${ticksBetween(low, high, 4).map((tick) => svg`<line class="axis" x1=${ROOM.left} x2=${width - ROOM.right} y1=${y(tick)} y2=${y(tick)} /><text x=${ROOM.left - 8} y=${y(tick) + 5} text-anchor="end">${tick}</text>`)}
      <text x="0" y="12">${unit.symbol}</text>
      ${ticksBetween(0, last, width < 420 ? 3 : 6).map((tick) => svg`<text x=${x(tick)} y=${HEIGHT - ROOM.bottom + 20} text-anchor="middle">${tick}</text>`)}
      <text x=${width - ROOM.right} y=${HEIGHT - 6} text-anchor="end">demand, ${flow.symbol}</text>
      <line class="base" x1=${ROOM.left} x2=${width - ROOM.right} y1=${y(Math.max(low, 0))} y2=${y(Math.max(low, 0))} />
      ${pair.limits.map(({ name, value }) => svg`<line class="limit" x1=${ROOM.left} x2=${width - ROOM.right} y1=${y(shown(value))} y2=${y(shown(value))} /><text class="limit-name" x=${ROOM.left + 6} y=${y(shown(value)) - 5}>${name}</text>`)}
      <line class="here" x1=${demand} x2=${demand} y1=${ROOM.top} y2=${HEIGHT - ROOM.bottom} />
      <text class="here-name" x=${demand} y=${ROOM.top - 8} text-anchor="middle">the engine</text>
      <polyline class="now" points=${pathOf(drawn[0])} /><polyline class="then" points=${pathOf(drawn[1])} />
      ${here.map(({ name, at }) => {
        const words = at === 0 ? `${name}, now (dashed)` : name;
        const spot = labelAt(drawn[at as 0 | 1], words, at === upper);
        return svg`<text class="line-name" x=${spot.x} y=${spot.y} text-anchor="end">${words}</text>`;
      })}
    </svg>`;
  }
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

function pathOf(spots: readonly Spot[]): string {
  return spots.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ");
}

/** Where a line's name ends: over the end of the upper one, under the lower one as far back as the name reaches. */
function labelAt(spots: readonly Spot[], words: string, above: boolean): Spot {
  const end = spots.at(-1) ?? { x: 0, y: 0 };
  if (above) return end.y > ROOM.top + 30 ? { x: end.x, y: end.y - 10 } : { x: end.x - 16, y: end.y + 14 };
  const back = spots.findLast(({ x }) => x < end.x - 7.5 * words.length) ?? end;
  return { x: end.x, y: Math.min(Math.max(back.y, end.y) + 20, HEIGHT - ROOM.bottom - 6) };
}

/** The figure of a line at a demand, straight between its points. */
function valueAt({ demand, value }: Pair["lines"][0], at: number): number {
  const after = demand.findIndex((one) => one >= at);
  const [x0, x1] = [demand[after - 1] ?? 0, demand[after] ?? 1];
  const [y0, y1] = [value[after - 1] ?? Number.NaN, value[after] ?? Number.NaN];
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}

declare global {
  interface HTMLElementTagNameMap {
    "pair-chart": PairChart;
  }
}
