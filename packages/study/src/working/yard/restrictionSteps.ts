import { dateOf, dayOf } from "../../fleet/day.js";
import type { ElementState } from "../../fleet/limitsOfElement.js";
import { figureStep } from "../choices/leastInHand.js";
import * as formulas from "../formulas/yardDays.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { changeTotal } from "./changeTotal.js";
import type { MachineGiven } from "./MachineGiven.js";

/** The element changed longest ago of those whose soil is followed: the prediction counts from its change. */
export function oldestFollowed({ judged, outlook }: MachineGiven): ElementState | null {
  const followed = new Set(outlook.life.elements.map(({ name }) => name));
  const states = judged.elements.map(({ state }) => state).filter(({ element }) => followed.has(element.name));
  return states.reduce<ElementState | null>(
    (first, one) => (first === null || (one.running ?? Infinity) < (first.running ?? Infinity) ? one : first),
    null,
  );
}

/** What the gauge showed last with the present elements. */
export function gaugeStep({ history }: MachineGiven): Step | null {
  const { gauge } = history;
  return (
    gauge &&
    inWords(`the log, on ${gauge.date}`, { name: "vacuum read", value: gauge.value, unit: "Pa", kind: "pressure" })
  );
}

/** Running time from the change of the oldest element to the limit, by `life` and by the gauge, whichever is sooner. */
export function restrictionAfter(given: MachineGiven): Step | null {
  const plain = given.outlook.life.end === null ? null : figureStep(given.system, "end of life");
  const read = byReading(given);
  if (plain && read) return worked(formulas.sooner, { t: [plain, read] });
  return plain ?? read;
}

function byReading(given: MachineGiven): Step | null {
  const { history, hours, outlook, system } = given;
  const oldest = oldestFollowed(given);
  const [v, C] = [gaugeStep(given), oldest && hours && changeTotal(given, oldest, hours)];
  const { time, vacuum: shown } = outlook.life.trace;
  const start = shown[0];
  if (!v || !C || !hours || !history.gauge || !outlook.vacuum || start === undefined) return null;
  if (v.value <= start || v.value >= outlook.vacuum.atChange) return null;
  const read = dayOf(history.gauge.date);
  const name = `running time on ${dateOf(read)}`;
  const u = worked(hours.formulas.since, { T: hours.at(read), C }, { name });
  const moment = (figure: string, at: number) => figureStep(system, figure, { moment: at }) as Step;
  const after = shown.findIndex((one) => one >= v.value);
  const e = figureStep(system, "end of life");
  if (outlook.life.end === null || e === null || after <= 0) {
    const c = figureStep(system, "limit at change");
    if (c === null) return null;
    const p = moment("vacuum at a moment", 0);
    const none = { name: "running time left", value: 0, unit: "s", kind: "running time" } as const;
    const l =
      u.value > 0 ? worked(formulas.leftStraight, { u, c, v, p }) : inWords("read before it ran at all", none, [u]);
    return worked(formulas.runAndLeft, { u, l });
  }
  const [f, g] = [moment("running time at a moment", after - 1), moment("running time at a moment", after)];
  const [p, q] = [moment("vacuum at a moment", after - 1), moment("vacuum at a moment", after)];
  if (time[after] === undefined) return null;
  return worked(formulas.runAndLeft, { u, l: worked(formulas.leftFromReading, { e, f, g, v, p, q }) });
}
