import { check, quantity } from "@thirstline/study";
import { workingOf } from "@thirstline/study/working";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { lessons } from "../../playground/src/lessons/index.js";
import type { Told } from "../../playground/src/lessons/Lesson.js";
import { plainText } from "../../playground/src/lessons/words.js";
import { demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

/** The lessons at a place: "" for their contents. */
async function visitLessons(place = "", options = {}): Promise<{ page: Page; complaints: string[] }> {
  const visited = await site.visit(place === "" ? "#lessons" : `#lessons/${place}`, options);
  await visited.page.locator("lesson-contents, lesson-view").waitFor();
  return visited;
}

const known = new Map<string, Told>();

/** What a lesson says, as the page works it out. */
function told(id: string): Told {
  const lesson = lessons.find((one) => one.id === id);
  if (lesson === undefined) throw new Error(`no lesson ${id}`);
  const found = known.get(id) ?? lesson.tell(demo);
  known.set(id, found);
  return found;
}

/** What has the keyboard, through every shadow root. */
const focused = (page: Page) =>
  page.evaluate(() => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at?.textContent?.trim().replace(/\s+/g, " ") ?? "";
  });

/** Waits until what is read is what is due, or says how it differs. */
async function becomes<Value>(read: () => Promise<Value>, due: Value): Promise<void> {
  const end = Date.now() + 5000;
  while (JSON.stringify(await read()) !== JSON.stringify(due) && Date.now() < end) {
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  expect(await read()).toEqual(due);
}

/** Waits until the keyboard is on something with these words in it, and hands back all it says. */
async function focusedOn(page: Page, words: string): Promise<string> {
  await becomes(async () => (await focused(page)).includes(words), true);
  return focused(page);
}

const question = (page: Page, at: number) => page.locator("lesson-question").nth(at);
const pages = (pdf: Buffer) => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

test("a lesson is gone through by keyboard: a wrong prediction, then a right one, in other units", async () => {
  const { page, complaints } = await visitLessons();
  await page.getByRole("link", { name: /What a finer pore costs/ }).focus();
  await page.keyboard.press("Enter");
  await page.locator("lesson-view").waitFor();
  await focusedOn(page, "What a finer pore costs");
  expect(await page.locator("lesson-model").count()).toBe(0);

  // From the title through the button that shows the machine to the box.
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.type("4.9 kPa");
  await page.keyboard.press("Enter");
  const heron = check(demo("heron.yaml")).points[0];
  const now = heron?.suction.find(({ name }) => name === "prefilter A")?.drop ?? Number.NaN;
  const said = await focusedOn(page, "Not this time.");
  expect(said).toContain(`the calculation says ${quantity(4 * now, "pressure", "metric")}`);
  expect(said).toContain("Twice is what one would expect");
  expect(await page.locator("lesson-model").count()).toBe(1);

  const box = question(page, 1).getByRole("textbox");
  await box.focus();
  await page.keyboard.type("a lot");
  await page.keyboard.press("Enter");
  await question(page, 1).getByRole("alert").waitFor();
  // Three times as much, by the pores squared over the area, in inches of mercury.
  await box.fill(`${(3 * now) / 3386.388640341} inHg`);
  await page.keyboard.press("Enter");
  await focusedOn(page, "Yes.");
  expect(await page.getByText("Done: you had the second case right.").count()).toBe(1);
  expect(complaints).toEqual([]);
});

test("progress is kept over a reload, told in the contents and forgotten when asked", async () => {
  const { page } = await visitLessons("air-out");
  const commit = async (at: number, choice: number) => {
    await question(page, at).getByRole("radio").nth(choice).check();
    await question(page, at).getByRole("button").click();
    await question(page, at).locator(".answer").waitFor();
  };
  const right = (which: "first" | "second") => {
    const asked = told("air-out")[which];
    return asked.form === "choice" ? asked.choices.findIndex((choice) => choice.right) : -1;
  };
  await commit(0, 0);
  await page.getByRole("link", { name: "All lessons" }).first().click();
  const stages = () => page.locator("lesson-contents .stage").allTextContents();
  await becomes(stages, ["Begun"]);
  await page.reload();
  await becomes(stages, ["Begun"]);
  await page.getByRole("link", { name: /getting the air out/ }).click();
  await commit(0, right("first"));
  await commit(1, right("second"));
  await page.reload();
  await page.getByRole("link", { name: "All lessons" }).click();
  await becomes(stages, ["Done"]);
  await page.getByRole("button", { name: "Forget how far I have come" }).click();
  await becomes(stages, []);
  expect(await focused(page)).toBe("Lessons");
  await page.reload();
  await page.locator("lesson-contents ol").waitFor();
  expect(await stages()).toEqual([]);
});

test("the live model reads what the study answers, on the page and on the sheet it opens", async () => {
  const { page } = await visitLessons("finer-substitute");
  await question(page, 0).getByRole("radio").first().check();
  await question(page, 0).getByRole("button").click();
  await page.getByRole("slider", { name: "Temperature of the fuel" }).fill("-5");
  const { shows } = told("finer-substitute");
  const readings = () => page.locator("lesson-model dd").allTextContents();
  const due = shows.reads(268.15).map(({ words }) => plainText(words, "metric"));
  await becomes(readings, due);
  const point = check(demo("heron-finer.yaml"), { temperatures: [268.15] }).points[0];
  expect(due).toContain(quantity(point?.vacuum.middle ?? Number.NaN, "vacuum", "metric"));
  await page.getByRole("radio", { name: "US" }).check({ force: true });
  await becomes(
    readings,
    shows.reads(268.15).map(({ words }) => plainText(words, "us")),
  );
  await page.getByRole("button", { name: "Open this on the sheet" }).click();
  await page.locator("bench-sheet .sentence").waitFor();
  expect(await page.locator(".sentence").textContent()).toContain(quantity(268.15, "temperature", "us"));
});

test("every lesson opens, answers and is drawn without a complaint", async () => {
  const { page, complaints } = await visitLessons();
  for (const { id, title } of lessons) {
    await page.goto(`${site.address}#lessons/${id}`);
    await page.getByRole("heading", { level: 2, name: title }).waitFor();
    const { first } = told(id);
    if (first.form === "number")
      await question(page, 0)
        .getByRole("textbox")
        .fill(first.reads === "duration" ? "9 h" : "9 kPa");
    else await question(page, 0).getByRole("radio").first().check();
    await question(page, 0).getByRole("button").click();
    await page.locator("lesson-model svg").first().waitFor();
  }
  expect(complaints).toEqual([]);
});

test("a lesson prints as two sheets on A4 and on letter, all of them as two each", async () => {
  const { page } = await visitLessons("finer-substitute");
  for (const format of ["A4", "Letter"]) expect([format, pages(await page.pdf({ format }))]).toEqual([format, 2]);
  await page.getByRole("link", { name: "All lessons" }).click();
  await page.locator("lesson-contents").waitFor();
  expect(pages(await page.pdf({ format: "Letter" }))).toBe(2 * lessons.length);
});

test.each([
  ["wide and light", { viewport: { width: 1440, height: 900 }, colorScheme: "light" }],
  ["narrow and dark", { viewport: { width: 390, height: 844 }, colorScheme: "dark" }],
] as const)("lessons, %s, have no fault axe-core can find and do not scroll sideways", async (_, options) => {
  const { page } = await visitLessons("", options);
  expect(await accessibilityFaults(page)).toEqual([]);
  for (const id of ["coarse-then-fine", "reading-the-gauge"]) {
    await page.goto(`${site.address}#lessons/${id}`);
    const { first } = told(id);
    if (first.form === "number") await question(page, 0).getByRole("textbox").fill("3600 h");
    else await question(page, 0).getByRole("radio").first().check();
    await question(page, 0).getByRole("button").click();
    await page.locator("lesson-model svg").first().waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  }
  await page.setViewportSize({ width: 320, height: 700 });
  await becomes(() => page.evaluate(() => document.documentElement.scrollWidth), 320);
});

test("every figure a lesson names for its working has one, on the system the lesson shows", () => {
  for (const { id } of lessons) {
    const { explains, shows } = told(id);
    const system = shows.system(shows.control.start);
    expect(explains.filter((figure) => workingOf(system, figure) === null)).toEqual([]);
  }
});
