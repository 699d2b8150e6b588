import { parseArgs } from "node:util";
import type { ArgumentFault } from "./ArgumentFault.js";
import { type Command, commands } from "./commands.js";
import { type Option, type OptionName, options } from "./options.js";
import { optionsTaken } from "./optionsTaken.js";
import type { Request } from "./Request.js";

/** A command line taken apart, with everything that is wrong with it. */
export interface Parsed {
  readonly command: Command | null;
  readonly request: Request;
  readonly faults: readonly ArgumentFault[];
}

/** Takes a command line apart: the command and its options in any order, the rest files. */
export async function parse(args: readonly string[]): Promise<Parsed> {
  // Not strict: the parser's own refusals stop at the first one, and it takes "-10 degC" for an option.
  const { tokens } = parseArgs({
    args: [...args],
    options: parserOptions(),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const words = tokens.flatMap((token) => (token.kind === "positional" ? [token.value] : []));
  const given = new Map<OptionName, string[]>();
  // Many type "help" or "help check" out of habit.
  if (words[0] === "help") {
    words.shift();
    given.set("help", []);
  }
  const [word, ...files] = words;
  const command = commands.find(({ name }) => name === word) ?? null;
  const faults: ArgumentFault[] = [];
  for (const token of tokens) {
    if (token.kind !== "option") continue;
    const option = options.find(({ name }) => name === token.name);
    if (option === undefined) faults.push(await unknownOption(token.rawName, command));
    else faults.push(...take(option, token, given));
  }
  const free = given.has("help") || given.has("version");
  if (word === undefined && !free && faults.length === 0) faults.push(missingCommand());
  if (word !== undefined && command === null) faults.push(await unknownCommand(word));
  if (command !== null) faults.push(...foreign(command, given));
  if (command !== null && files.length === 0 && !free) faults.push(missingFile(command));
  return { command, request: { files, given }, faults };
}

function parserOptions() {
  return Object.fromEntries(
    options.map((option: Option) => [
      option.name,
      {
        type: option.value === undefined ? ("boolean" as const) : ("string" as const),
        ...(option.short === undefined ? {} : { short: option.short }),
      },
    ]),
  );
}

/** Puts an option's value with those already given. */
function take(
  option: Option & { readonly name: OptionName },
  { value, rawName }: { readonly value?: string | undefined; readonly rawName: string },
  given: Map<OptionName, string[]>,
): ArgumentFault[] {
  const refuse = (code: string, message: string) => [{ at: rawName, code, message }];
  const before = given.get(option.name);
  // "-t=5 degC" hands the sign over as part of the value; no value begins with one.
  given.set(option.name, [...(before ?? []), ...(value === undefined ? [] : [value.replace(/^=/, "")])]);
  if (option.value === undefined) return value === undefined ? [] : refuse("needless value", "takes no value");
  // What starts like another option is not a value; a negative number is.
  if (value === undefined || /^-+[A-Za-z]/.test(value))
    return refuse("missing value", `needs a value: ${rawName} ${option.value}`);
  return before !== undefined && !option.repeatable ? refuse("given twice", "is given twice; once is enough") : [];
}

function foreign(command: Command, given: ReadonlyMap<OptionName, readonly string[]>): ArgumentFault[] {
  const [of = null] = given.get("of") ?? [];
  const taken = optionsTaken(command, of);
  // Which options go with a question that there is not, nobody can say; the command tells that.
  if (taken === null) return [];
  const asked = command.of !== undefined && of !== null ? `${command.name} --of ${of}` : command.name;
  const strange = [...given.keys()].filter((name) => name !== "version" && !taken.includes(name));
  return strange.map((name) => {
    const others = commands.filter((one) => one.options.includes(name)).map((one) => one.name);
    const asks = of === null ? others.filter((one) => command.of?.some((name) => name === one)) : [];
    const hint = asks.length === 0 ? "" : `; for figures of those add ${asks.map((one) => `--of ${one}`).join(" or ")}`;
    return {
      at: `--${name}`,
      code: "foreign option",
      message: `is not for ${asked}, but for ${others.join(", ")}${hint}`,
    };
  });
}

async function unknownOption(rawName: string, command: Command | null): Promise<ArgumentFault> {
  const { nearest } = await import("@thirstline/spec");
  const near = nearest(
    rawName.replace(/^-+/, ""),
    options.map(({ name }) => name),
  );
  const hint =
    near === undefined
      ? `see thirstline ${command === null ? "" : `${command.name} `}--help`
      : `did you mean --${near}?`;
  return { at: rawName, code: "unknown option", message: `is not an option; ${hint}` };
}

async function unknownCommand(word: string): Promise<ArgumentFault> {
  if (/[./\\]/.test(word)) {
    const message = `is not a command; to ask of a file, write thirstline check ${word}`;
    return { at: `"${word}"`, code: "unknown command", message };
  }
  const { nearest } = await import("@thirstline/spec");
  const near = nearest(
    word,
    commands.map(({ name }) => name),
  );
  const hint = near === undefined ? `there are ${commandNames()}` : `did you mean ${near}?`;
  return { at: `"${word}"`, code: "unknown command", message: `is not a command; ${hint}` };
}

function missingCommand(): ArgumentFault {
  return { at: "a command", code: "missing command", message: `is missing; there are ${commandNames()}` };
}

function missingFile(command: Command): ArgumentFault {
  const message =
    command.takes === "FOLDER"
      ? `needs a folder: thirstline ${command.name} FOLDER`
      : `needs a file, or - for standard input: thirstline ${command.name} FILE`;
  return { at: command.name, code: "missing file", message };
}

function commandNames(): string {
  const names = commands.map(({ name }) => name);
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
