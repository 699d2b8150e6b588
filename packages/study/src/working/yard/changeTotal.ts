import type { ElementState } from "../../fleet/limitsOfElement.js";
import type { Step } from "../Step.js";
import type { MachineGiven } from "./MachineGiven.js";
import type { MeterTrack } from "./MeterTrack.js";

/** The total of a meter when an element was changed; null when it cannot be told. */
export function changeTotal({ hours }: MachineGiven, state: ElementState, meter: MeterTrack): Step | null {
  const known = meter === hours ? state.running : state.travelled;
  if (known === null) return null;
  if (state.changed !== null) return meter.at(state.changed);
  return meter.plain("what the meter showed at a change that nobody dated, as the list of machines has it", known);
}
