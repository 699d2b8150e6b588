import type { OptionName } from "./options.js";
import { type OtherQuestion, otherQuestions } from "./otherQuestions.js";
import type { Run } from "./Run.js";

/** A command of the command line. */
export interface Command {
  readonly name: string;
  readonly question: string;
  /** what it reads, where that is not "FILE..." */
  readonly takes?: string;
  readonly about: string;
  readonly options: readonly OptionName[];
  /** questions whose figures it takes with --of, each asked with that question's own options */
  readonly of?: readonly OtherQuestion[];
  readonly examples: readonly string[];
  /** what its exit codes mean */
  readonly exits: readonly string[];
  /** loads what the command needs, and no sooner: help must not wait for it */
  readonly load: () => Promise<Run>;
}

/** Every command, in the order of help. */
export const commands: readonly Command[] = [
  {
    name: "check",
    question: "does it hold?",
    about:
      "Says whether the engine gets its fuel: vacuum at the pump against its limits, feed pressure, the most the system " +
      "can pass and what binds then, and what every part from the tank on costs. Tanks are taken at their low level.",
    options: ["temperature", "demand", "draws", "seed", "workers", "units", "json", "help"],
    examples: [
      "thirstline check ferry.yaml",
      'thirstline check ferry.yaml -t "15 degC" -t "-10 degC"',
      "thirstline check yard/*.yaml --json",
    ],
    exits: [
      "0  it holds",
      "1  it starves",
      "3  it is tight",
      "4  cannot say",
      "2  the input is at fault",
      "Of several, 2 beats 1, 1 beats 4, 4 beats 3, 3 beats 0.",
    ],
    load: async () => (await import("../commands/check.js")).runCheck,
  },
  {
    name: "curve",
    question: "how does vacuum grow with demand?",
    about:
      "Draws the vacuum at the pump against demand, from none to beyond the ceiling: with clean elements, as they are " +
      "now where the file states their soil, and due for change where it states their terminal drops. With gravity it " +
      "draws the pressure at the engine.",
    options: ["temperature", "demand", "to", "points", "draws", "seed", "workers", "units", "csv", "json", "help"],
    examples: ["thirstline curve ferry.yaml", 'thirstline curve ferry.yaml --to "600 L/h" --csv > ferry.csv'],
    exits: [
      "0  there is an answer",
      "4  no figure is a promise (wax, a fuel outside its data) or nothing can pass",
      "2  the input is at fault",
    ],
    load: async () => (await import("../commands/curve.js")).runCurve,
  },
  {
    name: "life",
    question: "how long do the elements last?",
    about:
      "Follows the soil on every filter element through the year's duty until a limit is met: in hours, fuel, distance " +
      "and date, which element goes first, when to change and by which rule, what changing one alone buys, how clean " +
      "the fuel gets, and what becomes of its water. Where the file states spreads, or something is only estimated, it " +
      "draws them and gives the chance of starving before the service interval.",
    options: ["draws", "seed", "workers", "units", "json", "help"],
    examples: ["thirstline life ferry.yaml", "thirstline life yard/*.yaml --draws 10000 --json"],
    exits: [
      "0  the elements last their service interval",
      "1  they are spent before it",
      "4  cannot say",
      "2  the input is at fault",
      "Of several, 2 beats 1, 1 beats 4, 4 beats 0.",
    ],
    load: async () => (await import("../commands/life.js")).runLife,
  },
  {
    name: "gauge",
    question: "what does the gauge say?",
    takes: "FILE READINGS",
    about:
      "Holds what was read at the machine against what its file predicts: how much of the restriction is soil, how many " +
      "hours are left to the change limit, nine times in ten between which ends, and whether it is the filter at all, or " +
      "air, a jump, wax, a wrong element or a kinked line. Readings are a table (CSV) with heads such as hours (h), " +
      "vacuum (inHg), feed pressure (psi), load (%), temperature (degC), tank level (m), changed, note; or typed.",
    options: ["reading", "gauge-error", "seed", "units", "json", "help"],
    examples: [
      "thirstline gauge ferry.yaml readings.csv",
      'thirstline gauge ferry.yaml --reading "11450 h, 14 kPa, 100 %, 12 degC"',
    ],
    exits: ["0  there is an answer, the filter or not", "4  cannot tell yet", "2  the input is at fault"],
    load: async () => (await import("../commands/gauge.js")).runGauge,
  },
  {
    name: "swap",
    question: "may I fit that one instead?",
    about:
      "Puts another element in place of one, or of several at once, and sets both side by side: what reaches the " +
      "injection pump against what the manual asks, what is in hand warm, cold and at the change, the temperature it " +
      "starves below, how long it lasts, whether it fits, and what a year of it costs. Coarser than the manual asks is a " +
      "plain no; finer is no reason to change.",
    options: [
      "at",
      "with",
      "from",
      "fitted",
      "rating",
      "temperature",
      "labour",
      "stoppage",
      "draws",
      "seed",
      "workers",
      "units",
      "json",
      "help",
    ],
    examples: [
      'thirstline swap ferry.yaml --at "prefilter A" --with p10.yaml --labour 60',
      'thirstline swap ferry.yaml --at "fine filter" --with "F2" --from elements.csv',
    ],
    exits: [
      "0  yes",
      "1  no: do not fit it",
      "3  with care",
      "4  cannot say: ask the maker",
      "2  the input is at fault",
      "Of several, 2 beats 1, 1 beats 4, 4 beats 3, 3 beats 0.",
    ],
    load: async () => (await import("../commands/swap.js")).runSwap,
  },
  {
    name: "size",
    question: "how many, which, how arranged?",
    about:
      "Goes through every arrangement of a catalogue's elements in the place of those a side has now: so many side by " +
      "side, in up to three stages, with each bore. Shows those that hold with 20 % in hand at every temperature, keep " +
      "to the code asked and last the interval, by yearly cost, by least vacuum and by fewest changes, and what the " +
      "others fail by. It searches at the likely figures; with --draws or --stoppage it draws what is uncertain of the ranked " +
      "few, for the chance of starving before the interval and the cost of a stoppage at that chance.",
    options: [
      "from",
      "side",
      "parallel",
      "stages",
      "bore",
      "code",
      "rating",
      "interval",
      "temperature",
      "labour",
      "stoppage",
      "draws",
      "seed",
      "workers",
      "rows",
      "units",
      "json",
      "help",
    ],
    examples: [
      "thirstline size ferry.yaml --from elements.csv",
      'thirstline size ferry.yaml --from elements.csv --stages 1 --bore "19 mm"',
    ],
    exits: ["0  there is an answer, be it that nothing meets every limit", "4  cannot say", "2  the input is at fault"],
    load: async () => (await import("../commands/size.js")).runSize,
  },
  {
    name: "remedy",
    question: "what would help most?",
    about:
      "Tries every single change to a machine: a wider bore, a shorter run, one more branch, a larger element, warmer " +
      "fuel, a lower pump, fewer fittings, a clean element, an open vent, a fuller tank. Ranks them by what each leaves " +
      "in hand at the worst temperature, with the ceiling it buys, and names the best pairs.",
    options: ["temperature", "cost", "units", "json", "help"],
    examples: ["thirstline remedy crane.yaml", 'thirstline remedy crane.yaml --cost "wider bore=120" -t "-10 degC"'],
    exits: ["0  there is an answer", "4  no figure is a promise", "2  the input is at fault"],
    load: async () => (await import("../commands/remedy.js")).runRemedy,
  },
  {
    name: "card",
    question: "what do I do at the bench?",
    about:
      "The job card for changing elements: cautions, what to have at hand, the order of work, priming strokes, where to " +
      "bleed, when to drain water, the leak check, what the gauge should read after it, and what to write down. All " +
      "elements, or those named. It never has a torque: the manual has it, and the manual decides.",
    options: ["at", "temperature", "prefill", "primer", "html", "units", "json", "help"],
    examples: [
      "thirstline card ferry.yaml",
      'thirstline card ferry.yaml --at "fine filter" -t "5 degC" --html > card.html',
    ],
    exits: ["0  there is a card", "4  the system has nothing to change", "2  the input is at fault"],
    load: async () => (await import("../commands/card.js")).runCard,
  },
  {
    name: "fleet",
    question: "what is due?",
    takes: "FOLDER",
    about:
      "One list over all machines of a folder: what is late, due now, due within 90 days or best left alone, by " +
      "whichever limit comes first of hours, distance, calendar and restriction, the manual's before all else, and the " +
      "parts to have on the shelf. The folder holds system files and, each optional, machines.csv (which machines there " +
      "are), log.csv (what was read and changed) and shelf.csv (parts on hand). Nothing is drawn unless --draws is given.",
    options: ["on", "within", "log", "ics", "draws", "seed", "workers", "units", "csv", "json", "help"],
    examples: [
      "thirstline fleet yard",
      'thirstline fleet yard --within "30 days" --ics due.ics --csv > due.csv',
      'thirstline fleet yard --log "Heron, 2026-11-25, 11650 h, changed all"',
    ],
    exits: [
      "0  nothing is due",
      "1  something is late or due now",
      "3  something is due within the days looked ahead",
      "4  nothing can be said of a machine that stops the work",
      "2  the input is at fault, or nothing was written to the log",
      "Of several, 2 beats 1, 1 beats 4, 4 beats 3, 3 beats 0.",
    ],
    load: async () => (await import("../commands/fleet.js")).runFleet,
  },
  {
    name: "why",
    question: "why that number?",
    takes: "FILE FIGURE",
    about:
      "Shows how a figure was reached: its formula, the same with values put in, the result, and what every letter is, " +
      "with where it comes from: a place in the file, a published table, a search with what proves it, or a figure of its " +
      "own. Without a figure it lists all there are. Everything is worked out anew with its units and compared. Figures " +
      "of check, curve and life are asked for as they are; those of " +
      `${otherQuestions.slice(0, -1).join(", ")} and ${otherQuestions.at(-1)} with --of and the ` +
      "options of that question. Where such a question has several of a figure, what it is of stands before it: " +
      '"now: vacuum", "arrangement 2: cost of a year", "Yard crane: days until it is due"; that alone lists all its figures.',
    options: ["of", "temperature", "demand", "depth", "draws", "seed", "markdown", "units", "json", "help"],
    of: otherQuestions,
    examples: [
      "thirstline why ferry.yaml",
      'thirstline why ferry.yaml "vacuum" --depth 2',
      'thirstline why ferry.yaml "drop of prefilter A" -t "-10 degC" --markdown',
      'thirstline why crane.yaml "single 1: ceiling gained" --of remedy',
      'thirstline why ferry.yaml readings.csv "running time left" --of gauge',
      'thirstline why yard "Yard crane: days until it is due" --of fleet',
    ],
    exits: ["0  there is a working", "4  the figure has no value here", "2  the input is at fault"],
    load: async () => (await import("../commands/why.js")).runWhy,
  },
];
