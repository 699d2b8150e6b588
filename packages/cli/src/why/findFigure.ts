import { nearest } from "@thirstline/spec";
import type { Subject } from "./Subject.js";

/** What a name means: a figure of something, what a list shows of everything or of one thing, or nothing. */
export type FoundFigure =
  | { readonly subject: Subject; readonly figure: string }
  | { readonly list: readonly Subject[] }
  | { readonly unknown: string };

/**
 * Finds a figure by its name, with what it is of before it where that has to be told: "changed: vacuum".
 *
 * @param name null for a list of all
 * @returns what is meant, or in words why nothing is
 */
export function findFigure(subjects: readonly Subject[], name: string | null): FoundFigure {
  if (name === null) return { list: subjects };
  const labelled = subjects.filter(({ label }) => label !== "");
  const whole = labelled.find(({ label }) => label === name);
  if (whole) return { list: [{ ...whole, brief: whole.list }] };
  const [named] = labelled
    .filter(({ label }) => name.startsWith(`${label}: `))
    .sort((one, other) => other.label.length - one.label.length);
  if (named) return ofOne(named, name.slice(named.label.length + 2).trim());
  const [only, ...others] = subjects;
  if (only && others.length === 0) return ofOne(only, name);
  const [owner, ...more] = ownersOf(subjects, name);
  if (owner && more.length === 0) return { subject: owner, figure: name };
  if (owner) return { unknown: `is a figure of several; say of which: ${examples([owner, ...more], name)}` };
  return { unknown: `is not a figure here; ${hintAmong(subjects, name)}` };
}

/** What has a figure of a name: by its question, or, as any system has it, all that stand for one. */
function ownersOf(subjects: readonly Subject[], name: string): readonly Subject[] {
  const owners = subjects.filter(({ own }) => own.includes(name));
  if (owners.length > 0) return owners;
  // To look at every system would take long, and what one of them has the others have too.
  const systems = subjects.filter(({ general }) => general);
  return systems[0]?.has(name) ? systems : [];
}

function ofOne(subject: Subject, figure: string): FoundFigure {
  if (subject.has(figure)) return { subject, figure };
  const { label } = subject;
  const near = nearOf(figure, namesOf(subject));
  const hint = near === undefined ? NO_HINT : `did you mean ${called(subject, near)}?`;
  return { unknown: `is not a figure of ${label === "" ? "this system here" : `"${label}"`}; ${hint}` };
}

function hintAmong(subjects: readonly Subject[], name: string): string {
  const labels = subjects.map(({ label }) => label);
  const system = subjects.find(({ general }) => general);
  const names = [...labels, ...subjects.flatMap(({ own }) => own), ...(system ? namesOf(system) : [])];
  const near = nearOf(name, names);
  if (near === undefined) return NO_HINT;
  if (labels.includes(near)) return `did you mean "${near}"?`;
  return `did you mean ${examples(ownersOf(subjects, near), near)}?`;
}

const NO_HINT = "thirstline why without a figure lists them";

function namesOf({ list }: Subject): string[] {
  return list().map(({ name }) => name);
}

function nearOf(name: string, names: readonly string[]): string | undefined {
  const known = [...new Set(names)];
  return nearest(name, known) ?? known.find((one) => one.includes(name) || name.includes(one));
}

function called({ label }: Subject, figure: string): string {
  return `"${label === "" ? "" : `${label}: `}${figure}"`;
}

function examples(subjects: readonly Subject[], figure: string): string {
  const few = subjects.slice(0, 2).map((one) => called(one, figure));
  return `${few.join(" or ")}${subjects.length > 2 ? " or another" : ""}`;
}
