import { type Fault, readSystem } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import type { Query } from "../args/Query.js";
import type { Request } from "../args/Request.js";
import { readQuery } from "../args/readQuery.js";
import { argumentFaults, complain } from "../io/complain.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { readInputs } from "../io/readInput.js";
import type { Answered } from "./Answered.js";
import { refusal } from "./refusal.js";

/** All the answers to a request, or the code it ended with. */
export interface Answers<Answer> {
  readonly query: Query;
  readonly answered: readonly Answered<Answer>[];
  /** whether some file was at fault; that has been told */
  readonly faulty: boolean;
}

/** Reads every file of a request and asks one question of each; tells all faults. Null when nothing is left to show. */
export async function answerAll<Answer>(
  request: Request,
  io: Io,
  out: Output,
  err: Output,
  ask: (system: System, query: Query) => Answer,
): Promise<Answers<Answer> | null> {
  const json = request.given.has("json");
  const query = await readQuery(request);
  if ("faults" in query) {
    await complain(argumentFaults(query.faults), json, out, err);
    return null;
  }
  const answered: Answered<Answer>[] = [];
  const faults: Fault[] = [];
  for (const input of await readInputs(request.files, io)) {
    const found = "fault" in input ? [input.fault] : answerOne(input, query, ask);
    if ("answer" in found) answered.push(found);
    else faults.push(...found);
  }
  if (faults.length > 0) await complain(faults, json, out, err);
  // A program that reads JSON gets the answers or the faults, never a mixture.
  return faults.length > 0 && (json || answered.length === 0) ? null : { query, answered, faulty: faults.length > 0 };
}

function answerOne<Answer>(
  { file, bytes }: { readonly file: string; readonly bytes: Uint8Array },
  query: Query,
  ask: (system: System, query: Query) => Answer,
): Answered<Answer> | Fault[] {
  const read = readSystem(bytes, { file });
  if ("faults" in read) return [...read.faults];
  try {
    return { file, system: read.system, fileCautions: read.cautions, answer: ask(read.system, query) };
  } catch (error) {
    return [refusal(file, error)];
  }
}
