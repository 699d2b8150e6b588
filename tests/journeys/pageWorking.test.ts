import { check, plain, quantity, verdictSentence } from "@thirstline/study";
import { formulas, type Step, workingOf } from "@thirstline/study/working";
import type { BrowserContextOptions, Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { valueText } from "../../playground/src/working/valueText.js";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";
import { sentenceIs, until } from "../support/sheetPage.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

async function visitWhole(path = "", options: BrowserContextOptions = {}) {
  const visited = await site.visit(path, options);
  if (path === "") await visited.page.getByRole("button", { name: "Pin this" }).waitFor();
  return visited;
}

const heading = (page: Page) => page.locator("step-working h3");
const headingIs = (page: Page, words: string) => heading(page).filter({ hasText: words }).waitFor({ timeout: 15_000 });

/** Opens the vacuum in the sentence beside its chart. */
async function openVacuum(page: Page): Promise<void> {
  const { point } = answerFor(demo("heron.yaml"));
  const vacuum = quantity(point.vacuum.middle, "vacuum", "metric");
  await page
    .locator("vacuum-chart p button.why", { hasText: new RegExp(`^${vacuum}`) })
    .first()
    .click();
  await headingIs(page, "Vacuum");
}

/** The working of a figure as the command line's `why` has it. */
function why(figure: string, asked = {}): Step {
  const found = workingOf(demo("heron.yaml"), figure, asked);
  if (found === null) throw new Error(`no working of ${figure}`);
  return found.step;
}

const shown = (step: Step) => Object.values(valueText(step, "metric")).filter((text) => text !== "");
/** All the panel says, powers of ten as `siText` writes them. */
const inPanel = async (page: Page) => {
  const text = await page.locator("step-working").evaluate((one) => one.shadowRoot?.textContent ?? "");
  return text.replaceAll(/ × 10(−?)(\d+)/g, (_, sign: string, power: string) => `e${sign === "" ? "" : "-"}${power}`);
};

/** Values of the rows shown, as the reader's units have them. */
const rowsOf = (page: Page) =>
  page.locator("step-working .rows .value").evaluateAll((all) => all.map((one) => one.firstElementChild?.textContent));

test("the vacuum in the sentence opens its working: formula, values and result as why has them", async () => {
  const { page, complaints } = await visitWhole();
  await openVacuum(page);
  const step = why("vacuum");
  if (step.origin.by !== "formula") throw new Error("the vacuum comes of a formula");
  expect(await heading(page).textContent()).toContain(shown(step)[0] ?? "none");
  const text = await inPanel(page);
  for (const one of step.origin.inputs.flatMap(({ steps }) => steps)) {
    for (const value of shown(one)) expect(text).toContain(value);
  }
  expect(text.toLowerCase()).toContain(step.origin.formula.source.toLowerCase());
  expect(await page.locator("step-working .maths math mi").count()).toBeGreaterThan(0);
  expect(await page.locator("step-working math [style]").count()).toBe(0);
  expect(complaints).toEqual([]);
});

test("from a sum to its terms, down to a bore in the file, and back; the drawing shows which part is meant", async () => {
  const { page, complaints } = await visitWhole();
  await openVacuum(page);
  await page.locator("step-working .rows tr", { hasText: "drop of pump line" }).locator("button").click();
  await headingIs(page, "Drop of pump line");
  expect(await page.locator("fuel-path button[data-marked]").textContent()).toContain("pump line");
  const bore = page.locator("step-working .rows tr", { hasText: "bore" }).first();
  expect(await bore.textContent()).toContain("in the file at suction[4].line.bore");
  await page.locator("step-working .trail button").first().click();
  await headingIs(page, "Vacuum");
  // Looking at a term shows its part.
  await page
    .locator("step-working .rows tr", { hasText: "drop of prefilter A" })
    .or(page.locator("step-working .rows tr", { hasText: "drop of elbows" }))
    .first()
    .hover();
  await page.locator("fuel-path g[data-marked]").waitFor();
  expect(complaints).toEqual([]);
});

test("a working is opened, walked and put away by keyboard alone, and the keyboard comes back to the figure", async () => {
  const { page } = await visitWhole();
  const figure = page.locator(".sentence button.why").last();
  const name = (await figure.textContent()) ?? "none";
  await figure.focus();
  await page.keyboard.press("Enter");
  await headingIs(page, "Ceiling at change");
  expect(await page.locator("working-panel [role=status]").textContent()).toContain("ceiling at change");
  const focused = () =>
    page.evaluate(() => {
      let at = document.activeElement;
      while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
      return at?.textContent?.trim() ?? "";
    });
  expect(await focused()).toContain("Ceiling at change");
  const row = page.locator("step-working .rows button").first();
  await row.focus();
  await page.keyboard.press("Enter");
  await headingIs(page, "Ceiling by");
  await page.locator("step-working .trail button").first().focus();
  await page.keyboard.press("Enter");
  await headingIs(page, "Ceiling at change");
  await page.keyboard.press("Escape");
  await until(async () => (await page.locator("working-panel").count()) === 0);
  expect(await focused()).toBe(name);
});

test("an open working follows the system and the units", async () => {
  const { page } = await visitWhole();
  await openVacuum(page);
  const colder = { ...demo("heron.yaml"), temperature: 273.15 };
  await page.getByLabel("Temperature of the fuel, exactly").fill("0 °C");
  await page.getByLabel("Temperature of the fuel, exactly").press("Enter");
  const { answer, point } = answerFor(colder);
  await sentenceIs(page, plain(verdictSentence(answer, point, "metric")));
  const [there] = check(colder).points;
  const vacuum = (units: "metric" | "us") => quantity(there?.vacuum.middle ?? Number.NaN, "vacuum", units);
  await headingIs(page, vacuum("metric"));
  await page.locator('input[name="units"][value="us"]').check({ force: true });
  await headingIs(page, vacuum("us"));
  expect((await rowsOf(page)).length).toBeGreaterThan(2);
});

test.each([
  ["light", 1440],
  ["dark", 390],
] as const)(
  "in the %s at %i px the panel has no fault axe-core can find and nothing runs out of the page",
  async (colorScheme, width) => {
    const { page } = await visitWhole("", { colorScheme, viewport: { width, height: 900 } });
    await openVacuum(page);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  },
);

test("the formulas: every one with its equation and source, found by word, and each at its own address", async () => {
  const { page, complaints } = await visitWhole("#formulas/reynolds", { viewport: { width: 390, height: 844 } });
  await page.locator("formulas-view article").first().waitFor();
  const entries = await page.locator("formulas-view article").evaluateAll((all) =>
    all.map((one) => ({
      id: one.id,
      math: one.querySelector(".maths math") !== null,
      text: one.textContent?.replace(/\s+/g, " ") ?? "",
    })),
  );
  expect(entries.map(({ id }) => id).sort()).toEqual(formulas.map(({ id }) => id).sort());
  for (const { source, id } of formulas) {
    const entry = entries.find((one) => one.id === id);
    expect(entry?.math, id).toBe(true);
    expect(entry?.text.toLowerCase(), id).toContain(source.toLowerCase().replace(/\s+/g, " "));
    if (formulas.find((one) => one.id === id)?.checkedBy.length) expect(entry?.text, id).toContain("largest error");
  }
  await until(async () =>
    page.locator("article#reynolds").evaluate((one) => Math.abs(one.getBoundingClientRect().top) < 60),
  );
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  await page.getByLabel("Find a formula").fill("colebrook");
  await until(async () => (await page.locator("formulas-view article").count()) < 12);
  expect(await page.locator("formulas-view article").count()).toBeGreaterThan(0);
  // All two hundred take axe-core longer than they take anybody else; they are made alike.
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

test("from a working to its formula's page and back", async () => {
  const { page } = await visitWhole("", { viewport: { width: 1440, height: 900 } });
  await openVacuum(page);
  await page.locator('step-working a[href*="#formulas/"]').click();
  await page.locator("formulas-view article.here").waitFor();
  await page.getByRole("link", { name: "Back to the sheet" }).click();
  await page.locator(".sentence").waitFor();
  await headingIs(page, "Vacuum");
});

test("a lesson holds the working of what it explains once its reasons are shown", async () => {
  const { page, complaints } = await visitWhole("#lessons/hot-petrol");
  await page.locator("lesson-question").first().waitFor();
  expect(await page.locator("lesson-working").count()).toBe(0);
  await page.locator("lesson-question input").first().fill("10 kPa");
  await page.keyboard.press("Enter");
  await headingIs(page, "Vapour margin");
  await page.locator("lesson-working .choice label", { hasText: "vapour pressure" }).click();
  await headingIs(page, "Vapour pressure");
  expect(await page.locator("lesson-working math").count()).toBeGreaterThan(0);
  expect(complaints).toEqual([]);
});
