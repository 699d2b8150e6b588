import { describe, expect, test } from "vitest";
import { sheetFault } from "../edit/sheetFault.js";
import { demo } from "../file/demos.test-support.js";
import { answersOf } from "../model/answersOf.js";
import { lessons } from "./index.js";
import { isNear, judged } from "./judged.js";
import type { Question, Told } from "./Lesson.js";
import { plainText, type Words } from "./words.js";

const told = new Map(lessons.map(({ id, tell }) => [id, tell(demo)]));
const ids = lessons.map(({ id }) => id);
const of = (id: string) => told.get(id) as Told;

/** Standards, manuals, fuel classes and the like, which carry digits and are no figures. */
const NAMES = /ISO \d+|EN \d+|TM [\d-]+|AP-\d+|ASTM D\d+\.\d+/g;

function textsOf({ situation, explanation, working, safety = [], sources = [], shows, first, second }: Told): Words[] {
  const readings = valuesOf(shows.control).flatMap((value) => shows.reads(value).map(({ words }) => words));
  const questions = [first, second].flatMap(textsOfQuestion);
  return [...situation, ...explanation, ...working, ...safety, ...sources, shows.caption, ...readings, ...questions];
}

function textsOfQuestion(question: Question): Words[] {
  if (question.form === "choice") {
    return [question.ask, ...question.choices.flatMap(({ label, answer }) => [label, answer])];
  }
  const { ask, because, slips, otherwise } = question;
  return [ask, because, otherwise, ...slips.map(({ misses }) => misses)];
}

function valuesOf(control: Told["shows"]["control"]): number[] {
  if (control.by === "choice") return control.options.map(({ value }) => value);
  return [control.min, control.start, control.max];
}

test("every lesson in the folder is taught, each at an address of its own", () => {
  const files = Object.keys(import.meta.glob("./lessons/*.ts"));
  expect(files.length).toBeGreaterThan(0);
  expect(ids).toHaveLength(files.length);
  expect(new Set(ids).size).toBe(files.length);
  expect(ids.filter((id) => !/^[a-z-]+$/.test(id))).toEqual([]);
});

describe.each(ids)("%s", (id) => {
  test("holds no figure that was typed: every digit comes of an answer or stands in a name", () => {
    const typed = textsOf(of(id)).flatMap((words) => words.filter((piece) => typeof piece === "string"));
    expect(typed.map((one) => one.replace(NAMES, "")).filter((one) => /\d/.test(one))).toEqual([]);
    const { shows, first, second } = of(id);
    const labels = shows.reads(shows.control.start).map(({ label }) => label);
    const boxes = [first, second].flatMap((question) => (question.form === "number" ? [question.label] : []));
    expect([shows.control.label, ...labels, ...boxes].filter((one) => /\d/.test(one))).toEqual([]);
    const lesson = lessons.find((one) => one.id === id);
    expect(`${lesson?.title} ${lesson?.after}`).not.toMatch(/\d/);
  });

  test.each(["metric", "us"] as const)("has no figure missing, in %s units", (units) => {
    const read = textsOf(of(id)).map((words) => plainText(words, units));
    expect(read.filter((one) => /\b(NaN|undefined|null|Infinity|none)\b/.test(one))).toEqual([]);
    expect(read.filter((one) => one.trim() === "")).toEqual([]);
  });

  test.each(["first", "second"] as const)(
    "its %s question has one right answer, and words for every other",
    (which) => {
      const question = of(id)[which];
      if (question.form === "choice") {
        expect(question.choices.filter(({ right }) => right)).toHaveLength(1);
        expect(question.choices.length).toBeGreaterThan(2);
        expect(question.choices.filter(({ answer }) => plainText(answer, "metric").length < 30)).toEqual([]);
        expect(question.choices.map((_, at) => judged(question, at).right)).toEqual(
          question.choices.map((one) => one.right),
        );
        return;
      }
      const { right, near, slips } = question;
      expect(Number.isFinite(right)).toBe(true);
      expect(judged(question, right * (1 + 0.99 * near)).right).toBe(true);
      expect(judged(question, right * (1 + 1.01 * near)).right).toBe(false);
      expect(slips.length).toBeGreaterThan(1);
      // A slip that counted as near would be told it is right.
      expect(slips.filter(({ value }) => isNear(value, right, near) || !Number.isFinite(value))).toEqual([]);
      for (const { value, misses } of slips) {
        expect(plainText(judged(question, value).words, "metric")).toContain(plainText(misses, "metric"));
      }
    },
  );

  test("its live model can be drawn over the whole of its control", () => {
    const { shows } = of(id);
    for (const value of valuesOf(shows.control)) {
      const figure = shows.figure(value);
      // What is shown can be put on the sheet.
      expect(sheetFault(shows.system(value))).toBe(null);
      expect(answersOf(shows.system(value)).check.points).toHaveLength(1);
      if (figure.draws === "curve") {
        const numbers = [...figure.line.flat(), ...figure.at, ...figure.levels.map((level) => level.value)];
        expect(numbers.filter((one) => !Number.isFinite(one))).toEqual([]);
        const places = figure.line.map(([x]) => x);
        expect(places).toEqual([...places].sort((one, two) => one - two));
      }
      if (figure.draws === "particles") {
        const { cleanliness } = figure.answer;
        expect(cleanliness.length).toBeGreaterThan(2);
        expect(cleanliness.flatMap(({ counts }) => [...counts]).filter((one) => !(one > 0))).toEqual([]);
      }
    }
  });
});
