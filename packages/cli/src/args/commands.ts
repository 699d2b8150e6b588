import type { OptionName } from "./options.js";
import type { Run } from "./Run.js";

/** A command of the command line. */
export interface Command {
  readonly name: string;
  readonly question: string;
  readonly about: string;
  readonly options: readonly OptionName[];
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
    options: ["temperature", "demand", "units", "json", "help"],
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
    options: ["temperature", "demand", "to", "points", "units", "csv", "json", "help"],
    examples: ["thirstline curve ferry.yaml", 'thirstline curve ferry.yaml --to "600 L/h" --csv > ferry.csv'],
    exits: [
      "0  there is an answer",
      "4  no figure is a promise (wax, a fuel outside its data) or nothing can pass",
      "2  the input is at fault",
    ],
    load: async () => (await import("../commands/curve.js")).runCurve,
  },
];
