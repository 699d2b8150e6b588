import { type Fault, quantity, readReadings, typedReadings } from "@thirstline/spec";
import type { GaugeReading } from "@thirstline/spec/system";
import { type GaugeAnswer, type GaugeOptions, gauge } from "@thirstline/study";
import type { ArgumentFault } from "../args/ArgumentFault.js";
import type { Request } from "../args/Request.js";
import { readQuery } from "../args/readQuery.js";
import { argumentFaults, complain } from "../io/complain.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { readInputs } from "../io/readInput.js";
import { type Answers, answerAll } from "./answerAll.js";

/** The answer to `gauge`, with the readings it was asked with. */
export interface GaugeAnswers extends Answers<GaugeAnswer> {
  readonly readings: readonly GaugeReading[];
  readonly options: GaugeOptions;
}

/** Reads a system and readings, and answers `gauge`; tells all faults. Null when there is nothing to show. */
export async function gaugeAnswers(request: Request, io: Io, out: Output, err: Output): Promise<GaugeAnswers | null> {
  const asked = await askedOf(request, io);
  if ("faults" in asked) {
    await complain(asked.faults, request.given.has("json"), out, err);
    return null;
  }
  const { readings, gaugeError } = asked;
  const optionsOf = (seed: number): GaugeOptions => ({ seed, ...(gaugeError === null ? {} : { gaugeError }) });
  const ask = { ...request, files: request.files.slice(0, 1) };
  const answers = await answerAll(ask, io, out, err, (system, { seed }) => gauge(system, readings, optionsOf(seed)));
  return answers && { ...answers, readings, options: optionsOf(answers.query.seed) };
}

interface Asked {
  readonly readings: readonly GaugeReading[];
  /** Pa */
  readonly gaugeError: number | null;
}

/** The readings and the gauge's error, or everything that is wrong with them and with the options. */
async function askedOf(request: Request, io: Io): Promise<Asked | { readonly faults: readonly Fault[] }> {
  const { given, files } = request;
  const query = await readQuery(request);
  const faults: ArgumentFault[] = "faults" in query ? [...query.faults] : [];
  const refuse = (at: string, code: string, message: string) => faults.push({ at, code, message });
  const [error] = given.get("gauge-error") ?? [];
  const read = error === undefined ? null : quantity(error, "gaugeError");
  if (read && "fault" in read) refuse("--gauge-error", read.fault.code, read.fault.message);
  const typed = given.get("reading") ?? [];
  if (typed.length === 0 && files.length < 2) {
    refuse("gauge", "missing readings", "needs readings: thirstline gauge FILE READINGS.csv, or --reading");
  }
  if (typed.length > 0 && files.length > 1)
    refuse("--reading", "two sources", "and a file of readings exclude each other");
  if (files.length > 2) refuse("gauge", "several files", "takes one system file and one file of readings");
  const own = typedReadings(typed);
  if ("messages" in own) for (const message of own.messages) refuse("--reading", "not a reading", message);
  if (faults.length > 0 || "messages" in own) return { faults: argumentFaults(faults) };
  const table = typed.length > 0 ? own : await tableOf(files, io);
  if ("faults" in table) return table;
  return { readings: table.readings, gaugeError: read && "value" in read ? read.value : null };
}

async function tableOf(files: readonly string[], io: Io) {
  const [, name = ""] = files;
  // Standard input can be read only once, so it is refused here where it is the system file as well.
  const inputs = await readInputs(files[0] === "-" && name === "-" ? files : [name], io);
  const input = inputs.at(-1);
  if (!input || "fault" in input) return { faults: input ? [input.fault] : [] };
  return readReadings(input.bytes, { file: input.file });
}
