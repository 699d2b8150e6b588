import { readFileSync } from "node:fs";
import { parse } from "./args/parse.js";
import { type Exit, exit } from "./exit.js";
import { argumentFaults, complain } from "./io/complain.js";
import type { Io } from "./io/Io.js";
import { Output } from "./io/Output.js";
import { commandHelp, generalHelp } from "./text/help.js";

/**
 * Runs a command line.
 *
 * @param args what follows the program's name
 * @param io where to read and write
 * @returns the exit code: 0 yes, 1 no, 3 with care, 4 cannot say, 2 when the input is at fault
 * @example
 * process.exitCode = await main(["check", "heron.yaml"], io);
 */
export async function main(args: readonly string[], io: Io): Promise<Exit> {
  const out = new Output(io.stdout);
  const err = new Output(io.stderr);
  const code = await run(args, io, out, err);
  if (out.failure === null) return code;
  await err.write(`thirstline: cannot write: ${out.failure.message}\n`);
  return exit.fault;
}

async function run(args: readonly string[], io: Io, out: Output, err: Output): Promise<Exit> {
  const { command, request, faults } = await parse(args);
  if (faults.length > 0) return complain(argumentFaults(faults), request.given.has("json"), out, err);
  if (request.given.has("version")) {
    await out.write(`thirstline ${version()}\n`);
    return exit.yes;
  }
  if (command === null || request.given.has("help")) {
    await out.write(command === null ? generalHelp() : commandHelp(command));
    return exit.yes;
  }
  const answer = await command.load();
  return answer(request, io, out, err);
}

function version(): string {
  const manifest: unknown = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8"));
  return (manifest as { readonly version: string }).version;
}
