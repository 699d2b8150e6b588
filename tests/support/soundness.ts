import { fuelState, type ProfileEntry, rise, solve } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { check, life } from "@thirstline/study";

/** How far a bank's branches may miss its flow, and an inverse its flow, as a share of it. */
const TOLERANCE = 1e-9;
/** What one rounding of a pressure is, as a share of it. */
const ULP = 2 ** -52;

/**
 * Everything that is wrong with the answers to a system a file could hold: an exception, a figure that is no number, a
 * balance or an inverse that does not close, a life in which soil or restriction falls. Empty for a sound one.
 */
export function soundnessFaults(system: System): string[] {
  return [
    ...tried("check", () => notNumbers("check", check(system))),
    ...tried("life", () => lifeFaults(system)),
    ...tried("inverse", () => inverseFaults(system)),
  ];
}

function tried(what: string, faults: () => string[]): string[] {
  try {
    return faults();
  } catch (error) {
    return [`${what} threw ${error instanceof Error ? error.message : String(error)}`];
  }
}

/** Paths of every NaN in plain data. */
function notNumbers(path: string, value: unknown): string[] {
  if (typeof value === "number") return Number.isNaN(value) ? [`${path} is NaN`] : [];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => notNumbers(`${path}.${key}`, one));
}

function lifeFaults(system: System): string[] {
  const answer = life(system);
  const { time } = answer.trace;
  return [
    ...notNumbers("life", answer),
    ...answer.elements.flatMap(({ name, soil, soilAtStart, restriction }) => [
      ...(soil < soilAtStart * (1 - TOLERANCE) ? [`${name} loses soil: ${soilAtStart} to ${soil} kg`] : []),
      ...(restriction < 1 - TOLERANCE ? [`${name} gets freer than clean: ${restriction}`] : []),
    ]),
    ...(time.some((one, at) => one < (time[at - 1] ?? 0)) ? ["time runs backwards in the trace"] : []),
    ...(answer.end !== null && !(answer.end.time >= 0 && answer.end.time <= answer.horizon * (1 + TOLERANCE))
      ? [`life ends outside its horizon: ${answer.end.time} s`]
      : []),
  ];
}

/** The suction path's flow put through its drop and back, and every bank's branches added up. */
function inverseFaults(system: System): string[] {
  const built = build(system);
  const fuel = fuelState(built.fuel, { temperature: built.temperature });
  const demand = built.demand(fuel);
  const flow = demand.burn + demand.return;
  const solved = solve(built.suction, fuel);
  const drop = solved.drop(flow);
  if (!Number.isFinite(drop)) return [];
  const back = solved.flow(drop);
  const head = Math.abs(solve(rise({ height: 10 }), fuel).drop(flow));
  const rounding = 64 * ULP * (Math.abs(drop) + head);
  const isBack = Math.abs(back - flow) <= TOLERANCE * flow || Math.abs(solved.drop(back) - drop) <= rounding;
  return [
    ...(isBack ? [] : [`flow(drop(${flow})) is ${back}, whose drop is ${solved.drop(back)} for ${drop} Pa`]),
    ...solved.profile(flow).flatMap(bankFaults),
  ];
}

function bankFaults(entry: ProfileEntry): string[] {
  if (entry.kind !== "bank") return [];
  const flows = entry.branches.map((branch) => branch[0]?.flow ?? 0);
  const sum = flows.reduce((total, one) => total + one, 0);
  const off = Math.abs(sum - entry.flow) > TOLERANCE * Math.abs(entry.flow);
  return [
    ...(off ? [`a bank's branches carry ${sum} of ${entry.flow} m3/s`] : []),
    ...entry.branches.flat().flatMap(bankFaults),
  ];
}
