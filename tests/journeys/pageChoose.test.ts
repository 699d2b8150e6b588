import { readFile } from "node:fs/promises";
import { readCatalogue, readSystem, type System } from "@thirstline/spec";
import {
  arrangedSystem,
  check,
  figure,
  fitElement,
  life,
  moneyText,
  plain,
  quantity,
  swap,
  swapRows,
  verdictSentence,
} from "@thirstline/study";
import type { BrowserContextOptions, Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openFigure } from "../support/openFigure.js";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";
import { read } from "../support/repository.js";
import { thirstline } from "./cli/thirstline.js";

let site: Site;

/** What the command line says, run before the page is: it holds up everything beside it while it runs. */
const run = (...args: string[]): string => thirstline(args, { folder: "demo" }).stdout;
const both = ["--at", "prefilter A", "--at", "prefilter B"];
const from = ["--from", "elements.csv"];
const rates = ["--labour", "60", "--stoppage", "2000"];
const told = {
  swap: run("swap", "heron.yaml", ...both, "--with", "element P10 tall", ...from, ...rates),
  size: run("size", "heron.yaml", ...from, ...rates, "--draws", "200", "--json"),
  none: run("size", "heron.yaml", ...from, "--stages", "1", "--parallel", "1", "--code", "9/5/0"),
  remedy: run("remedy", "crane-narrow-hose.yaml", "--cost", "wider bore=120"),
};

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

const text = read("packages/spec/demo/elements.csv");
const catalogue = readCatalogue(text, { file: "elements.csv" });
const elements = "elements" in catalogue ? catalogue.elements : [];
const element = (name: string) => {
  const found = elements.find((one) => one.name === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};

async function visit(
  question: string,
  options: BrowserContextOptions = {},
): Promise<{ page: Page; complaints: string[] }> {
  const visited = await site.visit(`#choose/${question}`, options);
  await visited.page.getByRole("button", { name: "Save the file" }).waitFor();
  await visited.page.locator("choose-view").waitFor();
  return visited;
}

/** Words as they are, wherever lines may break. */
const flat = (words: string | null) => (words ?? "").replace(/\s+/g, " ").trim();
/** A paragraph of the command line, from its first words to the next empty line. */
const paragraph = (out: string, from: string) => flat(out.slice(out.indexOf(from)).split("\n\n")[0] ?? "");
const idle = (page: Page) => page.locator("work-progress progress").waitFor({ state: "detached", timeout: 60_000 });
const open = (page: Page, name: string, content: string) =>
  page
    .locator("catalogue-desk input[type=file]")
    .setInputFiles({ name, mimeType: "text/csv", buffer: Buffer.from(content) });
const openSystem = (page: Page, name: string, content: string) =>
  page
    .locator("file-desk input[type=file]")
    .setInputFiles({ name, mimeType: "application/yaml", buffer: Buffer.from(content) });
const pick = (page: Page, name: string) =>
  page
    .getByRole("radio", { name: new RegExp(`^${name}( |$)`) })
    .first()
    .click();

/** Waits until something is so. */
async function until(holds: () => Promise<boolean>): Promise<void> {
  for (let tries = 0; tries < 200; tries++) {
    if (await holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error("it never came to be so");
}

/** What is on the sheet, by the file it is saved as. */
async function onSheet(page: Page): Promise<System> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the file" }).click(),
  ]);
  const back = readSystem(await readFile(await download.path(), "utf8"), { file: "saved.yaml" });
  if ("faults" in back) throw new Error(JSON.stringify(back.faults));
  return back.system;
}

test.concurrent("a swap is answered as the command line answers it, figure by figure", async () => {
  const { page, complaints } = await visit("swap");
  await pick(page, "element P10 tall");
  await page.getByLabel("An hour of work costs").fill("60");
  await page.getByLabel("A stoppage costs").fill("2000");
  await page.getByLabel("A stoppage costs").blur();
  await page.locator("swap-answer tr", { hasText: "stoppages a year" }).waitFor({ timeout: 60_000 });
  await idle(page);
  expect(flat(await page.locator("swap-answer .sentence").textContent())).toBe(paragraph(told.swap, "Yes: "));
  const lines = told.swap.split("\n").map((line) => line.trim().split(/ {2,}/));
  const rows = await page.locator("swap-answer tbody tr").all();
  expect(rows.length).toBeGreaterThan(12);
  for (const row of rows) {
    const cells = await row.locator("th, td").allTextContents();
    expect(lines, cells.join()).toContainEqual(cells.map(flat));
  }
  const why = flat(told.swap.slice(told.swap.indexOf("\nWhy")));
  const reasons = await page.locator("swap-answer li span").allTextContents();
  expect(reasons.length).toBeGreaterThan(1);
  for (const reason of reasons) expect(why).toContain(flat(reason));
  expect(complaints).toEqual([]);
}, 120_000);

test("figures of a swap open their workings, of what is fitted and of the other element alike", async () => {
  const { page, complaints } = await visit("swap", { viewport: { width: 1440, height: 1000 } });
  await pick(page, "element P10 tall");
  await page.getByRole("button", { name: "Use this" }).waitFor();
  await idle(page);
  const cells = (name: string) => page.locator("swap-answer tr", { hasText: name }).locator("button.why");
  const lasts = await openFigure(page, cells("lasts").last());
  const changed = fitElement(demo("heron.yaml"), ["prefilter A", "prefilter B"], element("element P10 tall"));
  expect(lasts.text).toBe(quantity(life(changed).end?.time ?? Number.NaN, "running time", "metric"));
  expect(lasts).toMatchObject({
    heading: expect.stringContaining(`End of life ${lasts.text}`),
    about: "With element P10 tall at prefilter A and prefilter B.",
  });
  const now = await openFigure(page, cells("lasts").first());
  expect(now).toMatchObject({ heading: expect.stringContaining(`End of life ${now.text}`), about: "As it is now." });
  const colder = await openFigure(page, cells("in hand at -10 °C").last());
  expect(colder.heading).toContain(`In hand, low end ${colder.text}`);
  // On paper they stand as they do on the screen.
  await page.emulateMedia({ media: "print" });
  expect(await cells("lasts").last().isVisible()).toBe(true);
  await page.emulateMedia({ media: "screen" });
  // With the working open, the view has no fault; and its formula's page and back leaves the answer as it was.
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.locator('step-working a[href*="#formulas/"]').first().click();
  await page.locator("formulas-view article.here").waitFor();
  await page.getByRole("link", { name: "Back to the figure" }).click();
  await cells("lasts").last().waitFor();
  await page.keyboard.press("Escape");
  // Why it is no, in its sentences.
  await pick(page, "element P10");
  const sentence = page.locator("swap-answer .sentence", { hasText: "No: do not fit element P10" });
  const starves = await openFigure(page, sentence.locator("button.why"));
  expect(starves.heading).toContain(`Starves below ${starves.text}`);
  const [first] = swap(
    demo("heron.yaml"),
    { at: ["prefilter A", "prefilter B"], with: element("element P10") },
    { draws: 0 },
  ).reasons;
  if (first?.code !== "starves") throw new Error("it starves");
  const drawn = page.locator("swap-answer li.no button.why").filter({ hasText: /kPa/ }).first();
  const vacuum = await openFigure(page, drawn);
  expect(vacuum.heading).toContain(`Vacuum ${quantity(first.point.vacuum.middle, "vacuum", "metric")}`);
  expect(complaints).toEqual([]);
}, 120_000);

test("figures of a list of arrangements and of a remedy open their workings", async () => {
  const { page, complaints } = await visit("size", { viewport: { width: 1440, height: 1000 } });
  await page.getByLabel("An hour of work costs").fill("60");
  await page.getByRole("button", { name: "Look for arrangements" }).click();
  const row = page.locator("size-table tbody tr").nth(1);
  await row.waitFor({ timeout: 90_000 });
  await idle(page);
  const words = flat(await row.locator("th").evaluate((one) => one.firstChild?.nextSibling?.textContent ?? ""));
  const names = ["Cost of a year", "Most vacuum", "Elements changed in a year", "Least in hand", "End of life"];
  for (const [at, name] of names.entries()) {
    const opened = await openFigure(page, row.locator("td button.why").nth(at));
    expect(opened.heading).toContain(name);
    // How many are changed in a year is shown rounded.
    if (name.startsWith("Elements")) {
      const value = Number(/[\d.]+$/.exec(opened.heading)?.[0]);
      expect(value.toFixed(0)).toBe(opened.text);
    } else expect(opened.heading).toContain(`${name} ${opened.text}`);
    expect(opened.about).toBe(`With ${words} on the suction side.`);
  }
  const failed = await openFigure(page, page.locator("size-answer .failed button.why").first());
  expect(failed.heading).toContain(failed.text.replaceAll(",", ""));
  await page.keyboard.press("Escape");
  await openSystem(page, "crane-narrow-hose.yaml", read("packages/spec/demo/crane-narrow-hose.yaml"));
  await page.getByRole("link", { name: "What would help most?" }).click();
  await page.getByRole("heading", { name: "The best pairs" }).waitFor({ timeout: 30_000 });
  const single = page.locator("remedy-table").first().locator("tbody tr").nth(1);
  const hand = await openFigure(page, single.locator("td button.why").first());
  expect(hand).toMatchObject({
    heading: expect.stringContaining(`In hand, low end ${hand.text}`),
    about: "With 7.14 mm bore for 6.35 mm on the suction side.",
  });
  const bore = await openFigure(page, page.locator("remedy-panel .sentence button.why").nth(1));
  expect(bore.heading).toContain("Change 1, to 7.14 mm");
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
}, 180_000);

test.concurrent("what is used stands on the sheet, in one step that can be undone", async () => {
  const { page } = await visit("swap");
  await page.getByRole("checkbox", { name: "prefilter B" }).uncheck();
  await page.getByRole("checkbox", { name: "prefilter A" }).uncheck();
  await page.getByText("Say which filter gets the other element.").waitFor();
  await page.getByRole("checkbox", { name: "fine filter" }).check();
  await pick(page, "element F2 long");
  await idle(page);
  await page.getByRole("button", { name: "Use this" }).click();
  await page.getByText("element F2 long is on the sheet at fine filter.").waitFor();
  const due = fitElement(demo("heron.yaml"), ["fine filter"], element("element F2 long"));
  expect(await onSheet(page)).toEqual(due);
  await page.getByRole("link", { name: "See the sheet" }).click();
  const { answer, point } = answerFor(due);
  await page
    .getByText(plain(verdictSentence(answer, point, "metric")))
    .first()
    .waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  expect(await onSheet(page)).toEqual(demo("heron.yaml"));
}, 90_000);

test.concurrent("a no says why, and what is not known is said as that", async () => {
  const { page } = await visit("swap");
  await page.getByRole("searchbox").fill("p10 beta 75 at 10");
  await page.getByText("5 of 30 elements").waitFor();
  await pick(page, "element P10");
  const given = { at: ["prefilter A", "prefilter B"], with: element("element P10") };
  const answer = swap(demo("heron.yaml"), given, { draws: 0 });
  expect(answer.verdict).toBe("no");
  await page.locator("swap-answer .sentence", { hasText: "No: do not fit element P10" }).waitFor();
  const below = swapRows(answer, "metric").find(({ name }) => name === "starves below");
  const shown = await page.locator("swap-answer tr", { hasText: "starves below" }).textContent();
  expect(flat(shown)).toContain(plain(below?.changed ?? ["?"]));
  await page.getByRole("searchbox").fill("nothing is called so");
  await page.getByText("None is like that. Look for less.").waitFor();
  await page.getByRole("searchbox").fill("W10");
  await openSystem(page, "generator.yaml", read("packages/spec/demo/generator.yaml"));
  await page.getByRole("checkbox", { name: "bowl filter B10" }).waitFor();
  await pick(page, "element W10");
  await page.locator("swap-answer li.unknown").first().waitFor();
}, 90_000);

/** One arrangement as the command line tells it. */
interface ToldArrangement {
  readonly stages: readonly { readonly element: string; readonly count: { readonly value: number } }[];
  readonly yearlyCost: { readonly value: number };
  readonly vacuum: { readonly value: number };
  readonly changesAYear: { readonly value: number };
  readonly code: string;
}

test.concurrent("a search lists what the command line lists, with its counts and its chances", async () => {
  const { page, complaints } = await visit("size", { viewport: { width: 1440, height: 1000 } });
  await page.getByLabel("An hour of work costs").fill("60");
  await page.getByLabel("A stoppage costs").fill("2000");
  await page.getByRole("button", { name: "Look for arrangements" }).click();
  await page.locator("size-table th", { hasText: "chance of starving" }).waitFor({ timeout: 90_000 });
  await idle(page);
  const [answer] = JSON.parse(told.size).answers;
  const rows = await page.locator("size-table tbody tr").all();
  const due: ToldArrangement[] = answer.arrangements.slice(0, 10);
  for (const [at, one] of due.entries()) {
    const words = one.stages.map(({ element: name, count: { value } }) => (value === 1 ? name : `${value} x ${name}`));
    const cells = (await rows[at]?.locator("th, td").allTextContents()) ?? [];
    const [name = "", cost, vacuum, changes, , , , code] = cells.map(flat);
    expect(name.startsWith(words.join(", then ")), `${name} for ${words}`).toBe(true);
    expect([cost, vacuum, changes, code]).toEqual([
      moneyText(one.yearlyCost.value),
      figure(one.vacuum.value, "vacuum", "metric"),
      one.changesAYear.value.toFixed(0),
      one.code,
    ]);
  }
  const counts = await page.locator("size-answer .failed b").allTextContents();
  expect(counts.map((count) => Number(count.replaceAll(",", "")))).toEqual(
    answer.failed.map(({ count }: { count: { value: number } }) => count.value),
  );
  // Sorted by vacuum the best of that ranking comes first; its figures are those the sheet has afterwards.
  await page.getByRole("button", { name: /^vacuum/ }).click();
  await page.locator("size-table th[aria-sort=ascending]", { hasText: "vacuum" }).waitFor();
  const best: ToldArrangement = answer.best.vacuum;
  const row = page.locator("size-table tbody tr").first();
  const [, , vacuum, , hand, lasts] = (await row.locator("th, td").allTextContents()).map(flat);
  await row.getByRole("button", { name: /^Use this/ }).click();
  await page.getByText("On the sheet now:").waitFor();
  const put = await onSheet(page);
  const stages = best.stages.map(({ element: name, count }) => ({ element: name, count: count.value }));
  expect(put).toEqual(arrangedSystem(demo("heron.yaml"), elements, "suction", { stages, bore: null }));
  const { points } = check(put, { temperatures: answer.temperatures.map(({ value }: { value: number }) => value) });
  expect(vacuum).toBe(figure(Math.max(...points.map((one) => one.vacuum.middle)), "vacuum", "metric"));
  expect(hand).toBe(quantity(Math.min(...points.map(({ inHand }) => inHand.low)), "ratio", "metric"));
  expect(lasts).toBe(quantity(life(put).end?.time ?? Number.NaN, "running time", "metric"));
  await page.getByRole("button", { name: "Undo" }).first().click();
  expect(await onSheet(page)).toEqual(demo("heron.yaml"));
  expect(complaints).toEqual([]);
}, 180_000);

test.concurrent("a search that finds nothing says what came nearest; one that cannot be made says what is missing", async () => {
  const { page } = await visit("size");
  await page.getByLabel("Most stages").selectOption("1");
  await page.getByLabel("Most side by side").selectOption("1");
  await page.getByLabel("Code asked for").fill("9/5");
  await page.getByLabel("Code asked for").blur();
  await page.getByText('"9/5" is not a cleanliness code').waitFor();
  await page.getByLabel("Code asked for").fill("9/5/0");
  await page.getByRole("button", { name: "Look for arrangements" }).click();
  await page.locator("size-answer .sentence").waitFor({ timeout: 30_000 });
  const sentence = flat(await page.locator("size-answer .sentence").textContent());
  expect(sentence).toBe(paragraph(told.none, "None of"));
  expect(sentence).toContain("The nearest is");
  await page.getByLabel("Coldest fuel").fill("-40 degC");
  await page.getByLabel("Coldest fuel").blur();
  await page.getByText("This is what was found for what stood here before.").waitFor();
  await page.getByRole("button", { name: "Look for arrangements" }).click();
  await page.locator("size-answer .sentence", { hasText: "Cannot say" }).waitFor({ timeout: 30_000 });
  expect(await page.locator("size-answer .why li").count()).toBeGreaterThan(0);
}, 90_000);

test.concurrent("the remedies are those of the command line, and one that is tried stands on the sheet", async () => {
  const { page } = await visit("remedy");
  await openSystem(page, "crane-narrow-hose.yaml", read("packages/spec/demo/crane-narrow-hose.yaml"));
  await page.getByRole("heading", { name: "The best pairs" }).waitFor({ timeout: 30_000 });
  await page.getByText("What a change costs").click();
  await page.getByLabel("wider bore").fill("120");
  await page.getByLabel("wider bore").blur();
  await page.locator("remedy-table th", { hasText: "costs" }).first().waitFor();
  expect(flat(await page.locator("remedy-panel .sentence").textContent())).toBe(paragraph(told.remedy, "What helps"));
  const lines = told.remedy.split("\n").map((line) => line.trim().split(/ {2,}/));
  const rows = await page.locator("remedy-table").first().locator("tbody tr").all();
  for (const row of rows) {
    const [change = "", verdict = "", hand = ""] = (await row.locator("th, td").allTextContents()).map(flat);
    const line = lines.find(([name = ""]) => change.startsWith(name.replace(/…$/, "")) && name !== "");
    expect(line?.slice(1, 3), change).toEqual([verdict.toLowerCase(), hand]);
  }
  await page
    .getByRole("button", { name: /^Try this: 7\.14 mm bore/ })
    .first()
    .click();
  await page.getByText("On the sheet now: 7.14 mm bore for 6.35 mm on the suction side.").waitFor();
  const put = await onSheet(page);
  const bores = put.suction.flatMap((part) => (part.part === "line" ? [part.bore] : []));
  expect(Math.min(...bores)).toBeCloseTo((9 / 32) * 0.0254, 12);
}, 60_000);

test.concurrent("the reader's own catalogue is read, kept on the device, and forgotten when told to", async () => {
  const { page } = await visit("swap");
  await page.getByText("of an invented catalogue").waitFor();
  await open(page, "mine.csv", text.replace("1.4,200,3,830", "1.4,two hundred,3,830"));
  const fault = page.locator("catalogue-desk file-faults li");
  await fault.waitFor({ timeout: 30_000 });
  expect(await fault.textContent()).toContain("two hundred");
  expect(await page.locator("catalogue-desk .row").textContent()).toContain("invented");
  const [head = "", ...lines] = text
    .trim()
    .split("\n")
    .filter((line) => !line.startsWith("#"));
  const many = Array.from({ length: 4000 }, (_, at) =>
    (lines[at % lines.length] as string).replace(/^element /, `E${at} `),
  );
  await open(page, "mine.csv", [head, ...many].join("\n"));
  await page.getByText("4000 elements of mine.csv, kept on this device only.").waitFor({ timeout: 60_000 });
  await page.getByRole("searchbox").fill("e3999");
  await page.getByText("1 of 4000 elements").waitFor();
  await page.reload();
  await page.getByText("4000 elements of mine.csv").waitFor({ timeout: 60_000 });
  await page.getByRole("button", { name: "Forget it" }).click();
  await page.getByText("30 elements of an invented catalogue").waitFor();
  await page.reload();
  await page.locator("element-list").waitFor();
  await page.getByText("30 elements of an invented catalogue").waitFor();
}, 180_000);

test.concurrent("a machine without filters has nothing to swap, and is told so", async () => {
  const { page } = await visit("swap");
  const bare = read("packages/spec/demo/generator.yaml").replace(/ {2}- filter:\n(?: {6}.*\n)+/, "");
  await openSystem(page, "bare.yaml", bare);
  await page.getByText("There is no filter on the sheet, so there is nothing to swap.").waitFor();
}, 30_000);

test.concurrent("everything is done with keys alone", async () => {
  const { page } = await visit("swap", { viewport: { width: 1440, height: 1000 } });
  await page.getByRole("searchbox").focus();
  await page.keyboard.type("P25 long");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Space");
  await page.getByRole("button", { name: "Use this" }).waitFor();
  await page.getByRole("link", { name: "How many, which, how arranged?" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Look for arrangements" }).focus();
  await page.keyboard.press("Enter");
  const slider = page.getByRole("slider", { name: "Arrangements by yearly cost" });
  await slider.waitFor({ timeout: 60_000 });
  const first = await slider.getAttribute("aria-valuetext");
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  await until(async () => (await slider.getAttribute("aria-valuenow")) === "2");
  expect(await slider.getAttribute("aria-valuetext")).not.toBe(first);
  expect(await page.locator("size-table tr.shown").count()).toBe(1);
}, 90_000);

test.concurrent("a search can be stopped", async () => {
  const { page } = await visit("size");
  await page.getByLabel("Most side by side").selectOption("8");
  await page.getByLabel("Bores to try for the lines there").fill("12 mm, 14 mm, 16 mm, 18 mm, 20 mm, 22 mm, 25 mm");
  await page.getByLabel("Bores to try for the lines there").blur();
  await until(async () => (await page.getByLabel("Bores to try for the lines there").inputValue()).includes("25 mm"));
  await page.getByRole("button", { name: "Look for arrangements" }).click();
  await page.getByRole("button", { name: "Stop" }).click({ timeout: 30_000 });
  await page.locator("work-progress progress").waitFor({ state: "detached" });
}, 60_000);

test.each([
  ["light", 390],
  ["dark", 390],
  ["light", 1440],
  ["dark", 1440],
] as const)(
  "axe finds nothing wrong in %s at %i px",
  async (colorScheme, width) => {
    const { page } = await visit("swap", { colorScheme, viewport: { width, height: 900 } });
    await pick(page, "element P30");
    await page.locator("pair-chart svg").waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole("link", { name: "How many, which, how arranged?" }).click();
    await page.getByRole("button", { name: "Look for arrangements" }).click();
    await page.getByRole("heading", { name: "The list" }).waitFor({ timeout: 60_000 });
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole("link", { name: "What would help most?" }).click();
    await page.locator("remedy-panel .sentence").waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  },
  120_000,
);

test("nothing is wider than a screen of 320 px, and the view works without a network", async () => {
  const { page, complaints } = await visit("swap", { viewport: { width: 320, height: 800 } });
  await page.evaluate(() => navigator.serviceWorker.ready);
  const width = () => page.evaluate(() => document.documentElement.scrollWidth);
  await pick(page, "element P30");
  await page.locator("pair-chart svg").waitFor();
  expect(await width()).toBeLessThanOrEqual(320);
  await page.reload();
  await page.context().setOffline(true);
  await page.reload();
  await page.locator("element-list").waitFor();
  await page.getByRole("link", { name: "How many, which, how arranged?" }).click();
  await page.getByRole("button", { name: "Look for arrangements" }).click();
  await page.getByRole("heading", { name: "The list" }).waitFor({ timeout: 60_000 });
  expect(await width()).toBeLessThanOrEqual(320);
  await open(page, "mine.csv", text);
  await page.getByText("30 elements of mine.csv").waitFor({ timeout: 30_000 });
  await page.getByRole("link", { name: "What would help most?" }).click();
  await page.locator("remedy-panel .sentence").waitFor();
  expect(await width()).toBeLessThanOrEqual(320);
  expect(complaints).toEqual([]);
}, 120_000);
