import { InputError } from "../../InputError.js";
import { requireMoreThan } from "../../require.js";
import { type CakeRun, type CakeRunFit, cakeFromLine } from "./cakeFromLine.js";

/**
 * Cake and medium from a run at constant pressure, by plain least squares through time over filtrate.
 *
 * @throws InputError naming the field; also when the readings give a slope or a start that is not above 0
 * @see C. J. Geankoplis, Transport Processes and Unit Operations (3rd ed.), section 14.2
 * @example
 * fitCakeRun({ area: 0.0439, drop: 338e3, dynamicViscosity: 8.937e-4, solids: 23.47, readings }).specificResistance
 */
export function fitCakeRun(run: CakeRun): CakeRunFit {
  if (run.readings.length < 2) {
    throw new InputError("fitCakeRun", "readings", "at least two", run.readings.length);
  }
  run.readings.forEach(({ time, filtrate }, at) => {
    requireMoreThan("fitCakeRun", `readings[${at}].time`, time, 0, "s");
    requireMoreThan("fitCakeRun", `readings[${at}].filtrate`, filtrate, 0, "m3");
  });
  const { readings } = run;
  const meanFiltrate = readings.reduce((sum, { filtrate }) => sum + filtrate, 0) / readings.length;
  const meanRatio = readings.reduce((sum, { time, filtrate }) => sum + time / filtrate, 0) / readings.length;
  let [across, along] = [0, 0];
  for (const { time, filtrate } of readings) {
    across += (filtrate - meanFiltrate) * (time / filtrate - meanRatio);
    along += (filtrate - meanFiltrate) ** 2;
  }
  const slope = across / along;
  return cakeFromLine(run, { slope, start: meanRatio - slope * meanFiltrate });
}
