import { nearest, quantity } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { type CardAnswer, type CardOptions, card, cardNames } from "@thirstline/study";
import type { ArgumentFault } from "../args/ArgumentFault.js";
import type { Query } from "../args/Query.js";
import type { Request } from "../args/Request.js";
import { readQuery } from "../args/readQuery.js";
import { argumentFaults, complain } from "../io/complain.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import type { Answered } from "./Answered.js";
import { type Answers, answerAll } from "./answerAll.js";

/** The cards of every file, with what they were asked with. */
export interface CardAnswers extends Answers<CardAnswer> {
  readonly asked: CardOptions;
}

/** The card of every file; tells all faults. Null when nothing is left to show, or a name is no filter. */
export async function cardAnswers(request: Request, io: Io, out: Output, err: Output): Promise<CardAnswers | null> {
  const json = request.given.has("json");
  const asked = await askedOf(request);
  if ("faults" in asked) {
    await complain(argumentFaults(asked.faults), json, out, err);
    return null;
  }
  const unknown: ArgumentFault[] = [];
  const answers = await answerAll(request, io, out, err, (system, query) => {
    const strange = unknownNames(system, asked.at);
    unknown.push(...strange);
    return strange.length > 0 ? null : card(system, { ...asked, units: query.units });
  });
  if (unknown.length > 0) await complain(argumentFaults(unknown), json, out, err);
  if (answers === null || unknown.length > 0) return null;
  const answered = answers.answered.filter((one): one is Answered<CardAnswer> => one.answer !== null);
  return { ...answers, answered, asked };
}

type Asked = CardOptions & { readonly at: readonly string[] };

/** Understands what only a card is asked, or says everything that is wrong with it. */
async function askedOf(request: Request): Promise<Asked | { readonly faults: readonly ArgumentFault[] }> {
  const { given, files } = request;
  const query = await readQuery(request);
  const faults: ArgumentFault[] = "faults" in query ? [...query.faults] : [];
  const refuse = (at: string, code: string, message: string) => faults.push({ at, code, message });
  const [prefill] = given.get("prefill") ?? [];
  if (prefill !== undefined && prefill !== "manual-allows") {
    refuse("--prefill", "unknown word", `"${prefill}" is not known here; write manual-allows, and only if it does`);
  }
  const [primer] = given.get("primer") ?? [];
  const stroke = primer === undefined ? null : quantity(primer, "stroke");
  if (stroke && "fault" in stroke) refuse("--primer", stroke.fault.code, stroke.fault.message);
  if (given.has("html") && given.has("json")) refuse("--html", "two forms", "and --json exclude each other");
  if (given.has("html") && files.length > 1) {
    refuse("--html", "several files", "makes one page; name one file at a time");
  }
  const temperatures = "faults" in query ? [] : (query satisfies Query).temperatures;
  if (temperatures.length > 1) {
    refuse("--temperature", "several temperatures", "may be given once: a card is for one day");
  }
  if (faults.length > 0) return { faults };
  const [temperature] = temperatures;
  return {
    at: given.get("at") ?? [],
    ...(temperature === undefined ? {} : { temperature }),
    ...(prefill === undefined ? {} : { prefill: "manual-allows" }),
    ...(stroke && "value" in stroke ? { primer: stroke.value } : {}),
  };
}

/** Names that are no element of the system, each with the one most likely meant. */
function unknownNames(system: System, at: readonly string[]): ArgumentFault[] {
  const known = cardNames(system);
  return at
    .filter((name) => !known.includes(name))
    .map((name) => {
      const near = nearest(name, known);
      const list = known.length === 0 ? "it has none" : `it has ${known.map((one) => `"${one}"`).join(", ")}`;
      const hint = near === undefined ? list : `did you mean "${near}"? ${list}`;
      return { at: "--at", code: "unknown filter", message: `"${name}" is no filter of ${system.name}; ${hint}` };
    });
}
