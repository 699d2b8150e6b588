import type { System } from "@thirstline/spec/system";
import type { CheckPoint, UnitSystem } from "@thirstline/study";
import { nothing, type SVGTemplateResult, svg } from "lit";
import { type Descent, descentOf, type Pane } from "./descentOf.js";
import { drawDescent, type Frame } from "./drawDescent.js";
import { type Layout, withStations } from "./layout.js";
import { deliveryLevels, suctionLevels } from "./levelsOf.js";
import type { Sketch } from "./sketch.js";
import { stationsOf } from "./stationsOf.js";

/** What the panes show. */
interface Answered {
  readonly system: System;
  readonly point: CheckPoint;
  readonly units: UnitSystem;
}

/** The descent on both sides of the pump, under or beside the path, with the light lines that lead down to its steps. */
export function drawPanes(laid: Layout, drawn: Sketch, { system, point, units }: Answered): SVGTemplateResult {
  const descent = descentOf(laid, point);
  const now = asItIs(laid, system, point);
  const shown = { units, pump: system.pump.kind };
  const suction = suctionLevels(descent, now, point, shown);
  const delivery = deliveryLevels(descent, now, point, shown);
  const { along, low, high } = drawn.descent;
  const frame = ({ from, to }: Pane, id: string): Frame => ({
    upright: laid.upright,
    from: from + along,
    to: to + along,
    low,
    high,
    units,
    id,
  });
  const first = frame(descent.suction, "under-suction");
  return svg`
    ${laid.upright ? nothing : laid.laid.map(({ middle }) => svg`<path class="guide" d="M${middle + drawn.path.x} ${drawn.guides.from}V${drawn.guides.to}" />`)}
    ${drawDescent(moved(descent.suction, along), suction, first, now && moved(now.suction, along))}
    ${suction.note === "" ? nothing : note(suction.note, first)}
    ${descent.delivery && delivery ? drawDescent(moved(descent.delivery, along), delivery, frame(descent.delivery, "under-delivery"), now?.delivery ? moved(now.delivery, along) : null) : nothing}`;
}

/** The descent with the soil that is stated, on the same places; null where none is. */
function asItIs({ laid, ...layout }: Layout, system: System, point: CheckPoint): Descent | null {
  if (point.asTheyAre === null) return null;
  const soiled = { ...point, ...point.asTheyAre };
  const stations = stationsOf(system, soiled);
  return descentOf({ ...layout, laid: withStations(laid, stations) }, soiled);
}

function moved(pane: Pane, by: number): Pane {
  const all = (falls: Pane["main"]) => falls.map(([along, pressure]) => [along + by, pressure] as const);
  return { ...pane, main: all(pane.main), branches: pane.branches.map(all) };
}

function note(text: string, { upright, to, low }: Frame): SVGTemplateResult | typeof nothing {
  return upright ? nothing : svg`<text class="note" x=${to} y=${low + 16} text-anchor="end">${text}</text>`;
}
