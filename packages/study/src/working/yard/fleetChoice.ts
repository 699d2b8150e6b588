import type { LogEntry, System } from "@thirstline/spec/system";
import { dayOf } from "../../fleet/day.js";
import type { FleetAnswer, FleetEntry } from "../../fleet/FleetAnswer.js";
import type { FleetMachine, FleetOptions } from "../../fleet/FleetMachine.js";
import { fleetEntry } from "../../fleet/fleetEntry.js";
import { historyOf } from "../../fleet/historyOf.js";
import { type Outlook, outlookOf } from "../../fleet/outlookOf.js";
import { type Member, type Members, membersOf } from "../members.js";
import { asked, inWords } from "../worked.js";
import { machineFigures } from "./machineFigures.js";
import { partFigures } from "./partFigures.js";
import { tracksOf } from "./tracksOf.js";

/** What of a yard has figures: the whole of it, a machine or a part. */
export type FleetMember = Member;

/** A yard whose figures are worked out: "yard", "machine 0" and "part 0" and on, in the order of the answer. */
export interface FleetChoice {
  readonly question: "fleet";
  readonly members: Members;
}

/**
 * What the figures of `fleet` belong to. A machine's are worked out when first asked for.
 *
 * @param machines as `fleet` was asked with, and so log and options
 */
export function fleetChoice(
  machines: readonly FleetMachine[],
  log: readonly LogEntry[],
  answer: FleetAnswer,
  options: FleetOptions,
): FleetChoice {
  const makers = new Map<string, () => FleetMember | null>([["yard", () => yardMember(answer, options)]]);
  const outlooks = new Map<System, Outlook>();
  const outlook = (system: System): Outlook => {
    const known = outlooks.get(system) ?? outlookOf(system);
    outlooks.set(system, known);
    return known;
  };
  for (const [at, entry] of answer.entries.entries()) {
    const machine = machines.find(({ name }) => name === entry.machine);
    if (!machine?.system || machine.barred || entry.reasons.some(({ code }) => code === "no answer")) continue;
    const { system } = machine;
    const rows = log.filter((row) => row.machine === machine.name);
    makers.set(`machine ${at}`, () => machineMember(entry, machine, rows, outlook(system), answer, options, system));
  }
  for (const [at, part] of answer.parts.entries()) {
    makers.set(`part ${at}`, () => ({ name: part.part, system: null, own: partFigures(part) }));
  }
  return { question: "fleet", members: membersOf(makers) };
}

function yardMember({ within }: FleetAnswer, options: FleetOptions): FleetMember {
  const name = "days looked ahead";
  const plain = { name, value: within, unit: "d" };
  const make = () =>
    options.within === undefined ? inWords("common practice, no source", plain) : asked("within", plain);
  return { name: "the yard", system: null, own: [{ group: "The yard", name, make }] };
}

function machineMember(
  entry: FleetEntry,
  machine: FleetMachine,
  rows: readonly LogEntry[],
  outlook: Outlook,
  answer: FleetAnswer,
  options: FleetOptions,
  stated: System,
): FleetMember {
  const on = dayOf(answer.on);
  const { system } = outlook;
  const lives = options.lives?.(stated) ?? null;
  const judged = fleetEntry(machine, rows, outlook, { on, within: answer.within }, lives);
  const history = historyOf(machine, rows, outlook, answer.on);
  const tracks = tracksOf(judged, history, system, on);
  return {
    name: machine.name,
    system,
    own: machineFigures({ entry, judged, history, outlook, system, on, lives, ...tracks }),
  };
}
