import { type Command, commands } from "../args/commands.js";
import { type Option, optionOf } from "../args/options.js";
import { left, wrap } from "./wrap.js";

/** What there is, for who asks without a command. */
export function generalHelp(): string {
  const rows = commands.map((one) => `  thirstline ${left(`${one.name} ${takenBy(one)}`, 20)} ${one.question}`);
  return page([
    "thirstline: will the pump get the fuel it asks for, through these filters and",
    "lines?",
    "",
    ...rows,
    "",
    "FILE is a system file; - reads one from standard input.",
    "",
    "  thirstline COMMAND --help      what a command takes",
    "  thirstline --version           which version this is",
  ]);
}

/** What a command takes. */
export function commandHelp(command: Command): string {
  return page([
    `thirstline ${command.name} ${takenBy(command)}  ${command.question}`,
    "",
    ...wrap(command.about),
    "",
    ...command.options.flatMap((name) => optionLines(optionOf(name))),
    "",
    "For example",
    ...command.examples.map((example) => `  ${example}`),
    "",
    "Exit code",
    ...command.exits.map((line) => `  ${line}`),
  ]);
}

function takenBy({ takes = "FILE..." }: Command): string {
  return takes;
}

function optionLines(option: Option): string[] {
  const short = option.short === undefined ? "" : `-${option.short}, `;
  const name = `  ${short}--${option.name}${option.value === undefined ? "" : ` ${option.value}`}`;
  const [first = "", ...rest] = wrap(option.help, "", 46);
  return [`${left(name, 33)} ${first}`, ...rest.map((line) => `${" ".repeat(34)}${line}`)];
}

function page(lines: readonly string[]): string {
  return `${lines.join("\n")}\n`;
}
