import { readFile } from "node:fs/promises";
import { curve, plain, quantity, verdictSentence } from "@thirstline/study";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";
import { drawingIn, saved, savedText, until } from "../support/sheetPage.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

/** The page with its charts, which come a frame after the path. */
async function visitCharts(options = {}): Promise<{ page: Page; complaints: string[] }> {
  const visited = await site.visit("", options);
  await visited.page.locator("vacuum-chart canvas").waitFor();
  await visited.page.locator("cold-map svg").waitFor();
  await visited.page.locator("life-panel canvas").waitFor();
  return visited;
}

test.concurrent("the figures saved from the chart are those of `thirstline curve`", async () => {
  const { page, complaints } = await visitCharts();
  const download = await saved(page, "Save vacuum at the pump against demand as CSV");
  expect(download.suggestedFilename()).toBe("heron-port-engine-curve.csv");
  const [head, ...rows] = (await readFile(await download.path(), "utf8")).split("\r\n");
  expect(head).toBe('demand (L/h),"vacuum at the pump, clean (kPa)"');
  const [point] = curve(demo("heron.yaml")).points;
  expect(rows).toHaveLength(point?.demand.length ?? 0);
  rows.forEach((row, at) => {
    const [demand = Number.NaN, vacuum = Number.NaN] = row.split(",").map(Number);
    // Six figures are written.
    expect(Math.abs(demand / ((point?.demand[at] ?? 0) * 3.6e6 || 1) - (at === 0 ? 0 : 1))).toBeLessThan(1e-5);
    expect(Math.abs((vacuum * 1000) / (point?.clean?.vacuum.middle[at] ?? 0) - 1)).toBeLessThan(1e-5);
  });
  expect(complaints).toEqual([]);
});

const pictures = [
  "vacuum at the pump against demand",
  "pressure at the injection pump against running time",
  "where it starves",
  "how clean the fuel is on its way",
  "path and descent",
] as const;

test.concurrent("every chart is saved as a picture, as a drawing and as figures", async () => {
  const { page, complaints } = await visitCharts();
  for (const what of pictures) await expectSaves(page, what);
  expect(complaints).toEqual([]);
});

async function expectSaves(page: Page, what: string): Promise<void> {
  const png = await readFile(await (await saved(page, `Save ${what} as PNG`)).path());
  expect(png.subarray(1, 4).toString()).toBe("PNG");
  expect(png.length).toBeGreaterThan(5000);
  const svg = await savedText(page, `Save ${what} as SVG`);
  const drawn = await drawingIn(page, svg);
  expect(drawn).toMatchObject({ root: "svg", fault: "" });
  expect(drawn.paths).toBeGreaterThan(4);
  expect(drawn.words.length).toBeGreaterThan(4);
  expect(svg).not.toMatch(/NaN|undefined|<image|<script|class=|var\(/);
  const [head = "", ...rows] = (await savedText(page, `Save ${what} as CSV`)).split("\r\n");
  expect(rows.length).toBeGreaterThan(3);
  expect(head).toMatch(/\(.+\)/); // units stand in the first line
  expect(rows.join()).not.toMatch(/NaN|undefined|Infinity/);
}

test.concurrent("the chart reads at the pointer, and at the demand when the pointer has left", async () => {
  const { page } = await visitCharts();
  const reads = page.locator("vacuum-chart chart-frame .reads table");
  const { point } = answerFor(demo("heron.yaml"));
  expect((await reads.allInnerTexts()).join()).toContain(quantity(point.demand.total, "flow", "metric"));
  await page.locator("vacuum-chart .u-over").hover({ position: { x: 60, y: 80 } });
  expect((await reads.allInnerTexts()).join()).toContain("At the pointer");
});

test.concurrent("pressing the map on its starved side goes there, and starves the ferry", async () => {
  const { page } = await visitCharts();
  await page.getByRole("radio", { name: /Finer prefilter/ }).check({ force: true });
  const map = page.locator("cold-map svg");
  await map.getByText("no room for soil").waitFor();
  await map.click({ position: { x: 200, y: 30 } });
  expect(await page.locator(".sentence").textContent()).toContain("starves");
});

test.concurrent.each([
  ["Temperature of the fuel, exactly", "14 degF", "-10 °C"],
  ["Demand of the engine, exactly", "90 gal/h", "340.69 L/h"],
  ["Altitude, exactly", "1000 ft", "304.8 m"],
  ["Micron rating, exactly", "0.3 mil", "7.62 µm"],
  ["Loaded, from clean to due, exactly", "35 %", "35 %"],
])("%s takes %s", async (label, typed, shown) => {
  const { page } = await site.visit();
  const box = page.getByLabel(label);
  await box.fill(typed);
  await box.blur();
  await until(async () => (await box.inputValue()) === shown);
});

test.concurrent("a figure without its unit is refused with what would be right, and changes nothing", async () => {
  const { page } = await site.visit();
  const box = page.getByLabel("Temperature of the fuel, exactly");
  await box.fill("12");
  await box.blur();
  await page.getByRole("alert").waitFor();
  expect(await page.getByRole("alert").textContent()).toBe('"12" has no unit; write it as "12 degC"');
  const { answer, point } = answerFor(demo("heron.yaml"));
  expect(await page.locator(".sentence").textContent()).toBe(plain(verdictSentence(answer, point, "metric")));
});

test.concurrent.each(["light", "dark"] as const)(
  "the charts, %s, have no fault axe-core can find",
  async (colorScheme) => {
    const { page } = await visitCharts({ colorScheme });
    await page.getByText("Table: vacuum at the pump against demand").click();
    await page.getByText("Table: where it starves").click();
    await page.getByText(/^Table: pressure at/).click();
    expect(await accessibilityFaults(page)).toEqual([]);
  },
);
