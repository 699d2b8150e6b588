import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { capital, card, cardTitle, figure, plain, quantity } from "@thirstline/study";
import type { BrowserContextOptions, Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openFigure } from "../support/openFigure.js";
import { demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";
import { read } from "../support/repository.js";
import { savedText, until } from "../support/sheetPage.js";
import { thirstline } from "./cli/thirstline.js";

const DAY = "2026-11-25";
const folder = mkdtempSync(join(tmpdir(), "field-"));
/** What the command line says, run before the page is: it holds up everything beside it while it runs. */
const run = (...args: string[]): string => thirstline(args, { folder: "demo" }).stdout;
const told = {
  gauge: JSON.parse(run("gauge", "heron.yaml", "readings/heron-loading.csv", "--json")).answers[0],
  list: run("fleet", "yard", "--on", DAY, "--csv", "--ics", join(folder, "due.ics")),
  fleet: JSON.parse(run("fleet", "yard", "--on", DAY, "--json")),
};

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
  rmSync(folder, { recursive: true });
});

async function visit(place: string, options: BrowserContextOptions = {}) {
  const visited = await site.visit(`#field/${place}`, options);
  await visited.page.locator(`${place}-place`).waitFor();
  return visited;
}

const one = (text: string | null) => (text ?? "").replace(/\s+/g, " ").trim();
const loading = read("packages/spec/demo/readings/heron-loading.csv");
const giveReadings = (page: Page, text: string) =>
  page.locator("readings-desk input[type=file]").setInputFiles({
    name: "readings.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(text),
  });
const yardFiles = ["log.csv", "machines.csv", "shelf.csv"].map((name) => `yard/${name}`);
const systems = ["heron", "crane", "generator", "workboat", "lorry", "dewatering", "pickup-staged"];
const yard = () =>
  [...yardFiles, ...systems.map((name) => `${name}.yaml`)].map((path) => ({
    name: path.slice(path.lastIndexOf("/") + 1),
    mimeType: "text/plain",
    buffer: Buffer.from(read(`packages/spec/demo/${path}`)),
  }));
async function openYard(page: Page): Promise<void> {
  await page.getByLabel("Open files").setInputFiles(yard());
  await page.getByLabel("Today is").fill(DAY);
  await page.locator("fleet-list li").first().waitFor();
}

test("the gauge's figures are the command line's, in either unit, and its soil goes on the sheet in one step", async () => {
  const { page, complaints } = await visit("gauge");
  await giveReadings(page, loading);
  const { left } = told.gauge;
  const answer = page.locator("gauge-answer");
  await answer.waitFor();
  const said = one(await answer.locator(".sentence").textContent());
  for (const end of ["low", "middle", "high"]) {
    expect(said).toContain(quantity(left[end].value, "running time", "metric"));
  }
  const drops = () => page.locator("gauge-tables tbody tr td:nth-child(3)").allTextContents();
  const rows = told.gauge.sides.flatMap((side: { elements: object[] }) => side.elements);
  const due = (units: "metric" | "us") =>
    rows.map(
      (row: { dropClean: { value: number }; drop: { value: number } }) =>
        `${figure(row.dropClean.value, "pressure", units)} to ${figure(row.drop.value, "pressure", units)}`,
    );
  expect((await drops()).slice(0, rows.length)).toEqual(due("metric"));
  await page.getByRole("radio", { name: "US" }).check({ force: true });
  await until(async () => JSON.stringify((await drops()).slice(0, rows.length)) === JSON.stringify(due("us")));
  expect(await page.locator("gauge-chart circle.point").count()).toBe(24);

  const before = await page
    .locator("thirstline-page")
    .evaluate((host) => JSON.stringify(Reflect.get(host, "sheet").system));
  const now = () =>
    page.locator("thirstline-page").evaluate((host) => JSON.stringify(Reflect.get(host, "sheet").system));
  await page.getByRole("button", { name: "Put this soil on the sheet" }).click();
  await until(async () => (await now()).includes(`"restriction":${Number(rows[0].ratio.middle.value.toPrecision(4))}`));
  // What was put on the sheet is not read as the soil the readings began with.
  expect(one(await answer.locator(".sentence").textContent())).toContain(
    quantity(left.middle.value, "running time", "us"),
  );
  await page.keyboard.press("Control+z");
  expect(await now()).toBe(before);
  expect(complaints).toEqual([]);
});

test("readings are typed in any unit, refused with what would be right, kept, changed and taken out", async () => {
  const { page, complaints } = await visit("gauge");
  const type = async (label: string, text: string) => page.getByRole("textbox", { name: label }).fill(text);
  await type("Hour meter", "11450 h");
  await type("Vacuum", "3");
  await page.getByRole("button", { name: "Take it in" }).click();
  await page.getByText(/"3" has no unit/).waitFor();
  expect(await page.locator("reading-list").count()).toBe(0);
  await type("Vacuum", "3 inHg");
  await type("Load, or the flow", "100 %");
  await page.keyboard.press("Enter");
  await page.locator("reading-list tbody tr").waitFor();
  await until(async () =>
    one(await page.locator("gauge-answer .sentence").textContent()).includes("there is 1 reading"),
  );

  await page.reload();
  await page.locator("reading-list tbody tr").waitFor();
  expect(one(await page.locator("reading-list tbody tr").textContent())).toContain("10.2");
  await page.getByRole("button", { name: /^Change the reading/ }).click();
  await type("Vacuum", "12 kPa");
  await page.getByRole("button", { name: "Put it right" }).click();
  await until(async () => one(await page.locator("reading-list tbody tr").textContent()).includes("12.0"));
  await page.getByText("Open, paste, save or take out readings").click();
  expect(await savedText(page, "Save as a table")).toBe("hours (h),vacuum (kPa),load (%)\n11450,12,100\n");
  await page.getByRole("button", { name: /^Take out the reading/ }).click();
  await until(async () => (await page.locator("reading-list").count()) === 0);
  await page.getByText("Paste a table").click();
  await page.locator("#pasted").fill("hours (h),vacuum (kPa)\n11450,deep\n11440,7\n");
  await page.getByRole("button", { name: "Read it" }).click();
  const faults = page.locator("file-faults");
  await faults.waitFor();
  await faults.getByText('vacuum: "deep"').waitFor();
  expect(complaints).toEqual([]);
});

test("a yard's list, table and calendar are the command line's, and a row opens on the sheet", async () => {
  const { page, complaints } = await visit("fleet");
  await openYard(page);
  const shown = () => page.locator("fleet-list .machine").allTextContents();
  const entries: { machine: string }[] = told.fleet.entries;
  await until(async () => JSON.stringify(await shown()) === JSON.stringify(entries.map(({ machine }) => machine)));
  expect(await page.locator("fleet-list h2").allTextContents()).toHaveLength(
    new Set(told.fleet.entries.map((entry: { group: string }) => entry.group)).size,
  );
  expect(await savedText(page, "Save the list as a table")).toBe(told.list);
  expect(await savedText(page, "Save as a calendar")).toBe(readFileSync(join(folder, "due.ics"), "utf8"));
  await page.getByRole("button", { name: "Open Yard crane on the sheet" }).click();
  await page.locator("bench-sheet .sentence").waitFor();
  expect(one(await page.locator("bench-sheet .sentence").textContent())).toContain("crane");
  expect(complaints).toEqual([]);
});

const note = async (page: Page, hours: string) => {
  await page.getByRole("button", { name: "Note something of Depot lorry" }).click();
  await page.getByRole("textbox", { name: "Day", exact: true }).fill("2026-11-24");
  await page.getByRole("textbox", { name: "Hour meter" }).fill(hours);
  await page.getByRole("button", { name: "Put it into the log" }).click();
};
const log = read("packages/spec/demo/yard/log.csv");

test("an entry is refused by the log's rules, else put after its last row, and kept with the log before it", async () => {
  const { page, complaints } = await visit("fleet");
  await openYard(page);
  await note(page, "7000 h");
  const refused = one(await page.getByText(/It was not put in/).textContent());
  expect(refused).toContain("the hour meter runs backwards, from 7179 h on 2026-10-26 to 7000 h on 2026-11-24");
  await note(page, "7290 h");
  await page.getByText("In the log: Depot lorry,2026-11-24,7290").waitFor();
  await page.reload();
  await page.locator("fleet-list li").first().waitFor();
  await page.getByLabel("Add files").setInputFiles(yard().slice(0, 1));
  await page.getByText("The log here has a row that no file has").waitFor();
  await page.getByRole("button", { name: "Leave it as it is" }).click();
  expect(await savedText(page, "Save the log")).toBe(`${log}Depot lorry,2026-11-24,7290,,,reading,\n`);
  await page.getByText("Save a file of it").click();
  expect(await savedText(page, "the log before the last entry")).toBe(log);
  expect(complaints).toEqual([]);
});

test("where another window wrote to the log since, that is told and nothing is written over it", async () => {
  const { page } = await visit("fleet");
  await openYard(page);
  const other = await page.context().newPage();
  await other.goto(`${site.address}#field/fleet`);
  await other.locator("fleet-list li").first().waitFor();
  await note(page, "7290 h");
  await page.getByText("In the log: Depot lorry,2026-11-24,7290").waitFor();
  await other.getByLabel("Today is").fill(DAY);
  await note(other, "7291 h");
  await other.getByText(/Another window of this page changed/).waitFor();
  await other.getByRole("button", { name: "Take in what is there now" }).click();
  await note(other, "7292 h");
  await other.getByText("In the log: Depot lorry,2026-11-24,7292").waitFor();
  const rows = ["Depot lorry,2026-11-24,7290,,,reading,", "Depot lorry,2026-11-24,7292,,,reading,", ""];
  expect(await savedText(other, "Save the log")).toBe(`${log}${rows.join("\n")}`);
});

test.each([
  ["refused", "SecurityError", "keeps nothing on the device"],
  ["full", "QuotaExceededError", "There is no room left"],
])("where storage is %s that is told, and readings and yard work all the same", async (_, name, words) => {
  const { page } = await site.visit("", {});
  await page.addInitScript((fault) => {
    const refuse = () => {
      throw new DOMException("no", fault);
    };
    Object.defineProperty(globalThis, "indexedDB", { value: { open: refuse, deleteDatabase: refuse } });
  }, name);
  await page.goto(`${site.address}#field/gauge`);
  await page.reload();
  await page.getByText(words).waitFor();
  await giveReadings(page, loading);
  await page.locator("gauge-answer .sentence").waitFor();
  await page.goto(`${site.address}#field/fleet`);
  await page.locator("yard-desk").waitFor();
  await openYard(page);
  await page.getByText(words).waitFor();
  await page.getByRole("button", { name: "Note something of Workboat" }).click();
  await page.getByRole("textbox", { name: "Hour meter" }).fill("666 h");
  await page.getByRole("button", { name: "Put it into the log" }).click();
  await page.getByText(`In the log: Workboat,${DAY},666`).waitFor();
  expect(await savedText(page, "Save the log")).toContain(`Workboat,${DAY},666`);
});

test("the card is the command line's, with boxes to tick, and prints alone on one sheet", async () => {
  const { page, complaints } = await visit("card");
  const items = () => page.locator("job-card li").allTextContents();
  const due = (options: Parameters<typeof card>[1]) =>
    card(demo("heron.yaml"), options).sections.flatMap((section) =>
      section.items.map(({ words }) => capital(plain(words)).replace(/_{3,}/g, "")),
    );
  const same = async (options: Parameters<typeof card>[1]) =>
    JSON.stringify((await items()).map(one)) === JSON.stringify(due(options).map(one));
  await until(() => same({}));
  await page.getByRole("checkbox", { name: "prefilter B", exact: true }).uncheck();
  await page.getByRole("checkbox", { name: /^Its manual allows/ }).check();
  await page.getByRole("textbox", { name: "A stroke of the hand primer" }).fill("12 mL");
  await page.keyboard.press("Tab");
  const options = { at: ["prefilter A", "fine filter"], prefill: "manual-allows", primer: 12e-6 } as const;
  await until(() => same(options));
  expect(await page.locator("job-card header p").textContent()).toBe(cardTitle(card(demo("heron.yaml"), options)));
  await page.locator("job-card input[type=checkbox]").first().check();
  for (const format of ["A4", "Letter"]) {
    const pdf = await page.pdf({ format });
    expect([format, (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length]).toEqual([format, 1]);
  }
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("button", { name: "Print the card" }).isVisible()).toBe(false);
  expect(await page.getByRole("heading", { level: 1 }).isVisible()).toBe(false);
  await page.emulateMedia({ media: "screen" });
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: /^Save it as a page/ }).click(),
  ]);
  expect(await readFile(await download.path(), "utf8")).toContain("<!doctype html>");
  expect(complaints).toEqual([]);
});

test("figures of the yard's list and of its parts open their workings", async () => {
  const { page, complaints } = await visit("fleet");
  await openYard(page);
  const lorry = page.locator("fleet-list li", { hasText: "Depot lorry" });
  const { due } = told.fleet.entries.find((entry: { machine: string }) => entry.machine === "Depot lorry");
  const days = await openFigure(page, lorry.locator(".day button.why"));
  expect(days).toMatchObject({
    text: `${due.days.value} days`,
    heading: expect.stringContaining(`Days until it is due ${due.days.value} d`),
    about: "Depot lorry, in the yard.",
  });
  const [part] = told.fleet.parts;
  const row = page.locator("fleet-ahead tbody tr", { hasText: part.part }).first();
  const short = await openFigure(page, row.locator("button.why").last());
  expect(short.text).toBe(String(part.short));
  expect(short.heading).toContain(`Parts to order ${short.text}`);
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
}, 60_000);

test("figures of what the gauge says open their workings", async () => {
  const { page, complaints } = await visit("gauge");
  await giveReadings(page, loading);
  const answer = page.locator("gauge-answer");
  const left = await openFigure(page, answer.locator(".sentence button.why").first());
  expect(left).toMatchObject({
    text: quantity(told.gauge.left.middle.value, "running time", "metric"),
    heading: expect.stringContaining(`Running time left ${left.text}`),
    about: "What the gauge says, by the readings.",
  });
  const row = page.locator("gauge-tables tbody tr").first();
  const ratio = await openFigure(page, row.locator("button.why").first());
  expect(ratio.heading).toContain(`Resistance over clean of prefilter A ${ratio.text}`);
  expect(ratio.about).toBe("What the gauge says, by the vacuum readings.");
  const chart = page.locator("gauge-chart");
  const met = await openFigure(page, chart.locator("h2 button.why"));
  expect(met.heading).toContain(`Temperature where the limit is met ${met.text}`);
  await chart.getByText("Table: the readings and what is fitted").click();
  const fitted = await openFigure(page, chart.locator(".rows li").last().locator("button.why").last());
  expect(fitted.heading).toContain(`Pressure reckoned at reading 24 ${fitted.text}`);
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
}, 60_000);

test("figures of the card open their workings, and its steps are ticked off anywhere else", async () => {
  const { page, complaints } = await visit("card");
  await page.locator("job-card h2").waitFor();
  const step = page
    .locator("job-card li", { hasText: "strokes" })
    .filter({ has: page.locator("button.why") })
    .first();
  const strokes = await openFigure(page, step.locator("button.why").first());
  expect(strokes).toMatchObject({
    text: String(card(demo("heron.yaml")).priming.strokes?.least),
    heading: expect.stringContaining(`Least strokes ${strokes.text}`),
    about: "The job card: with the elements changed.",
  });
  const item = page
    .locator("job-card li:has(input)")
    .filter({ has: page.locator("button.why") })
    .first();
  await openFigure(page, item.locator("button.why").first());
  expect(await item.locator("input").isChecked()).toBe(false);
  await item.locator("span").click({ position: { x: 4, y: 8 } });
  expect(await item.locator("input").isChecked()).toBe(true);
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
}, 60_000);

const looks = [
  ["wide and light", { viewport: { width: 1440, height: 900 }, colorScheme: "light" }],
  ["narrow and dark", { viewport: { width: 390, height: 844 }, colorScheme: "dark" }],
] as const;
/** What has the keyboard open something in each place, and what then shows. */
const opened = {
  gauge: { press: "Air before the pump", shows: "gauge-chart svg" },
  fleet: { press: "Look at an invented yard", shows: "fleet-list li" },
  card: { press: null, shows: "job-card" },
} as const;
const cases = looks.flatMap(([look, options]) =>
  (["gauge", "fleet", "card"] as const).map((place) => [place, look, options] as const),
);

test.each(cases)("%s, %s, has no fault axe-core can find and does not scroll sideways", async (place, _, options) => {
  const { page, complaints } = await visit(place, options);
  const { press, shows } = opened[place];
  if (press !== null) {
    await page.getByRole("button", { name: press }).focus();
    await page.keyboard.press("Enter");
  }
  await page.locator(shows).first().waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.setViewportSize({ width: 320, height: 700 });
  await until(() => page.evaluate(() => document.documentElement.scrollWidth <= 320));
  expect(complaints).toEqual([]);
});
