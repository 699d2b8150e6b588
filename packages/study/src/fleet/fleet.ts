import type { LogEntry, System } from "@thirstline/spec/system";
import { dayOf } from "./day.js";
import type { FleetAnswer, FleetEntry, FleetGroup, FleetReason } from "./FleetAnswer.js";
import type { FleetMachine, FleetOptions } from "./FleetMachine.js";
import { fleetEntry, type Judged } from "./fleetEntry.js";
import { fleetParts } from "./fleetParts.js";
import type { Window } from "./groupOf.js";
import { type Outlook, outlookOf } from "./outlookOf.js";

/** Days looked ahead when nobody says. */
const WITHIN = 90;

/**
 * What is due? One list over all machines of a yard, by whichever limit comes first of hours, distance, calendar and
 * restriction, the manual's before all else; and the parts to have on the shelf. No machine is left out: of one that
 * nothing can be said of, the list says why.
 *
 * What a system leads one to expect is worked out once, however many machines have it.
 *
 * @param machines every one under a name of its own
 * @param log rows of any machine, in any order; those of machines not listed are only named
 * @param options on: today; within: days looked ahead, 90 when left out; shelf, lives
 * @returns the answer; dates are whole days of the calendar
 * @example
 * fleet([{ name: "Heron", file: "heron.yaml", system, stakes: null, changed: null }], log, { on: "2026-11-25" })
 */
export function fleet(machines: readonly FleetMachine[], log: readonly LogEntry[], options: FleetOptions): FleetAnswer {
  const window: Window = { on: dayOf(options.on), within: options.within ?? WITHIN };
  const rows = new Map<string, LogEntry[]>();
  for (const row of log) {
    const own = rows.get(row.machine);
    if (own) own.push(row);
    else rows.set(row.machine, [row]);
  }
  const listed = new Set(machines.map(({ name }) => name));
  const outlooks = new Outlooks(options.lives ?? (() => null));
  const judged: Judged[] = machines.map((machine) => {
    const found = machine.barred ?? (machine.system === null ? FILE_AT_FAULT : outlooks.of(machine.system));
    if ("code" in found) return { entry: unknownEntry(machine, found), elements: [], hours: null, distance: null };
    return fleetEntry(machine, rows.get(machine.name) ?? [], found.outlook, window, found.lives);
  });
  return {
    question: "fleet",
    on: options.on,
    within: window.within,
    entries: judged.map(({ entry }) => entry).sort(byUrgency),
    parts: fleetParts(judged, options.shelf ?? [], window),
    unlisted: [...rows]
      .filter(([machine]) => !listed.has(machine))
      .map(([machine, own]) => ({ machine, rows: own.length })),
  };
}

const FILE_AT_FAULT: FleetReason = { code: "file at fault" };

type Expected = { readonly outlook: Outlook; readonly lives: Float64Array | null } | FleetReason;

/** What every system leads one to expect, worked out once for all systems of the same content. */
class Outlooks {
  private readonly lives: (system: System) => Float64Array | null;
  private readonly known = new Map<System, Expected>();
  private readonly byContent = new Map<string, Expected>();

  constructor(lives: (system: System) => Float64Array | null) {
    this.lives = lives;
  }

  of(system: System): Expected {
    const known = this.known.get(system);
    if (known) return known;
    const content = JSON.stringify(system);
    const found = this.byContent.get(content) ?? this.workOut(system);
    this.known.set(system, found);
    this.byContent.set(content, found);
    return found;
  }

  /** What core refuses is a system that no answer exists for; anything else is a mistake of ours and must be seen. */
  private workOut(system: System): Expected {
    try {
      return { outlook: outlookOf(system), lives: this.lives(system) };
    } catch (error) {
      if (!(error instanceof Error) || error.name !== "InputError") throw error;
      return { code: "no answer", message: error.message };
    }
  }
}

function unknownEntry({ name, file, stakes }: FleetMachine, reason: FleetReason): FleetEntry {
  return {
    machine: name,
    system: file,
    stakes,
    group: "cannot say",
    due: null,
    change: [],
    elements: [],
    hours: null,
    distance: null,
    gauge: null,
    chance: null,
    reasons: [reason],
    cautions: [],
  };
}

/** The order of the list. */
const ORDER: readonly FleetGroup[] = ["late", "now", "within", "left alone", "cannot say", "later"];

/** By group, then what stops the work first, then the day, then the name. */
function byUrgency(left: FleetEntry, right: FleetEntry): number {
  return (
    ORDER.indexOf(left.group) - ORDER.indexOf(right.group) ||
    Number(left.stakes === "a nuisance") - Number(right.stakes === "a nuisance") ||
    compare(left.due?.days ?? Infinity, right.due?.days ?? Infinity) ||
    compare(left.machine, right.machine)
  );
}

function compare<Value extends number | string>(left: Value, right: Value): number {
  return left < right ? -1 : left > right ? 1 : 0;
}
