import { type Command, commands } from "./commands.js";
import type { OptionName } from "./options.js";

/** Options of `why` that say how a working is shown, whichever question it is of. */
const SHOWING: readonly OptionName[] = ["of", "depth", "markdown", "units", "json", "help"];
/** Options of other questions that say how their own answer is shown, or what becomes of it. */
const ANSWERS: ReadonlySet<OptionName> = new Set<OptionName>(["csv", "html", "ics", "log"]);

/**
 * Options a command takes: its own, or, where it was asked `--of` another question, that question's.
 *
 * @param of the question named; null without one
 * @returns null where that is no question with figures, so that nothing can be said of its options
 */
export function optionsTaken(command: Command, of: string | null): readonly OptionName[] | null {
  if (command.of === undefined || of === null) return command.options;
  const other = commands.find(({ name }) => name === of && command.of?.some((one) => one === name));
  if (other === undefined) return null;
  return [...SHOWING, ...other.options.filter((name) => !ANSWERS.has(name) && !SHOWING.includes(name))];
}
