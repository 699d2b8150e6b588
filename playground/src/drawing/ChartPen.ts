import type { ChartData, ChartLine } from "../chart/ChartData.js";
import type { EndLabel } from "../chart/endLabels.js";
import type { Inks } from "../chart/inksOf.js";
import { lineStrokes, markStrokes } from "../chart/lineLooks.js";
import { rowsOfMarks } from "../chart/rowsOfMarks.js";
import { ticks } from "../path/ticks.js";
import { plainText, tag } from "./tag.js";

/** About how wide a letter of the face is, px at 14 px: names are only kept apart by it. */
const LETTER = 7.5;

/** Ends of the chart inside its drawing, px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Writes the pieces of a chart. */
export class ChartPen {
  private readonly inks: Inks;
  private readonly box: Box;
  private readonly x: (value: number) => number;
  private readonly y: (value: number) => number;

  constructor(inks: Inks, box: Box, x: (value: number) => number, y: (value: number) => number) {
    this.inks = inks;
    this.box = box;
    this.x = x;
    this.y = y;
  }

  heading(text: string): string {
    return tag("text", { x: 20, y: 32, "font-size": 19, "font-weight": 700, fill: this.inks.ink }, plainText(text));
  }

  axes({ x, y }: ChartData): string {
    const { left, right, top, bottom } = this.box;
    const upright = ticks(y.from, y.to, 5).map((value) => {
      const at = this.y(value);
      return (
        tag("path", { d: `M${left} ${at}H${right}`, stroke: this.inks.rule, fill: "none" }) +
        tag("text", { x: left - 10, y: at + 5, "text-anchor": "end" }, String(value))
      );
    });
    const along = ticks(x.from, x.to, 7).map((value) => {
      const at = this.x(value);
      return (
        tag("path", { d: `M${at} ${top}V${bottom}`, stroke: this.inks.rule, fill: "none" }) +
        tag("text", { x: at, y: bottom + 22, "text-anchor": "middle" }, String(value))
      );
    });
    const words = tag(
      "text",
      { x: (left + right) / 2, y: bottom + 50, "text-anchor": "middle" },
      plainText(`${x.label}, ${x.symbol}`),
    );
    return [...upright, ...along, words].join("");
  }

  wash({ stretch, x }: ChartData): string {
    if (stretch === null) return "";
    const from = this.x(Math.max(stretch.from, x.from));
    const width = this.x(Math.min(stretch.to, x.to)) - from;
    const { top, bottom } = this.box;
    return tag("rect", { x: from, y: top, width, height: bottom - top, fill: this.inks.limit, opacity: "0.13" });
  }

  line(at: readonly number[], { look, values, band }: ChartLine): string {
    const { width, dash } = lineStrokes[look];
    const d = (of: readonly (number | null)[]) => this.path(at, of);
    const wash = band
      ? tag("path", {
          d: `${d(band.high)}${this.path([...at].reverse(), [...band.low].reverse()).replace("M", "L")}Z`,
          fill: this.inks.ink,
          opacity: "0.14",
        })
      : "";
    return (
      wash +
      tag("path", {
        d: d(values),
        fill: "none",
        stroke: look === "pinned" ? this.inks.soft : this.inks.ink,
        "stroke-width": width,
        "stroke-dasharray": dash.length === 0 ? undefined : dash.join(" "),
        "stroke-linejoin": "round",
      })
    );
  }

  across({ label, look, value }: ChartData["horizontals"][number]): string {
    const { left, right } = this.box;
    const at = this.y(value);
    return this.mark(`M${left} ${at}H${right}`, look) + this.said(label, left + 8, at - 7, look);
  }

  uprights({ uprights }: ChartData): string {
    const { left, right, top, bottom } = this.box;
    const marks = uprights.map((mark) => ({ ...mark, at: this.x(mark.value) }));
    const width = (text: string) => text.length * LETTER;
    return rowsOfMarks(marks, { left, right, width, gap: 8 })
      .map(
        ({ mark, row, from }) =>
          this.mark(`M${mark.at} ${top}V${bottom}`, mark.look) +
          this.said(mark.label, from, bottom - 9 - 18 * row, mark.look),
      )
      .join("");
  }

  end({ text, x, y }: EndLabel): string {
    return tag("text", { x, y: y + 5, "font-weight": 600, fill: this.inks.ink }, plainText(text));
  }

  private mark(d: string, look: ChartData["horizontals"][number]["look"]): string {
    const { width, dash, limit } = markStrokes[look];
    return tag("path", {
      d,
      fill: "none",
      stroke: limit ? this.inks.limit : this.inks.soft,
      "stroke-width": width,
      "stroke-dasharray": dash.length === 0 ? undefined : dash.join(" "),
    });
  }

  private said(text: string, x: number, y: number, look: ChartData["horizontals"][number]["look"]): string {
    const fill = markStrokes[look].limit ? this.inks.limit : this.inks.soft;
    const halo = { stroke: this.inks.paper, "stroke-width": 4, "paint-order": "stroke" };
    return tag("text", { x, y, fill, "font-weight": 600, ...halo }, plainText(text));
  }

  /** A line's path; it begins anew behind a gap. */
  private path(at: readonly number[], values: readonly (number | null)[]): string {
    let open = false;
    return values
      .map((value, place) => {
        if (value === null) {
          open = false;
          return "";
        }
        const step = `${open ? "L" : "M"}${this.x(at[place] ?? 0).toFixed(1)} ${this.y(value).toFixed(1)}`;
        open = true;
        return step;
      })
      .join("");
  }
}
