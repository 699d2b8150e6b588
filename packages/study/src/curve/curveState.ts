import type { Pump, SupplyModel } from "@thirstline/core";
import { type Ends, each } from "../check/ends.js";
import type { CurveColumn, CurveState } from "./CurveAnswer.js";

/** What gauges read at every demand, m3/s; null when nothing can pass. */
export function curveState(models: Ends<SupplyModel>, demand: Float64Array, spread: boolean): CurveState | null {
  const { middle } = models;
  if (middle.intake.shut || middle.delivery.shut) return null;
  const sweep = (model: SupplyModel) => readAt(model, demand);
  const read = spread ? each(models, sweep) : sweepOnce(sweep(middle));
  const feed = each(read, ({ feedPressure }) => feedPressure);
  return {
    vacuum: column(
      each(read, ({ vacuum }) => vacuum),
      spread,
    ),
    feedPressure: feedColumn(feed, spread),
  };
}

/** The columns of one model. */
interface Readings {
  readonly vacuum: Float64Array;
  readonly feedPressure: Float64Array | null;
}

function readAt(model: SupplyModel, demand: Float64Array): Readings {
  const vacuum = new Float64Array(demand.length);
  const feed = new Float64Array(demand.length);
  const most = mostMoved(model.supply.pump);
  let known = true;
  demand.forEach((flow, at) => {
    const state = model.state(flow);
    vacuum[at] = state.vacuum;
    feed[at] = flow > most ? Number.NaN : (state.feedPressure ?? 0);
    known &&= state.feedPressure !== null;
  });
  return { vacuum, feedPressure: known ? feed : null };
}

/** The most a pump can move, m3/s; beyond it there is no feed pressure to speak of. */
function mostMoved(pump: Pump): number {
  if (pump.kind === "curve") return pump.points.at(-1)?.flow ?? 0;
  return pump.kind === "fixed" ? pump.flow : Infinity;
}

/** Where nothing has a band, one sweep serves all three ends. */
function sweepOnce(readings: Readings): Ends<Readings> {
  return { low: readings, middle: readings, high: readings };
}

function column({ low, middle, high }: Ends<Float64Array>, spread: boolean): CurveColumn {
  return { middle, band: spread ? { low, high } : null };
}

/** The end of most resistance is the end of least feed pressure. */
function feedColumn({ low, middle, high }: Ends<Float64Array | null>, spread: boolean): CurveColumn | null {
  if (low === null || middle === null || high === null) return null;
  return column({ low: high, middle, high: low }, spread);
}
