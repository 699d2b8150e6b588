import { readFile } from "node:fs/promises";
import { curve, plain, quantity, verdictSentence } from "@thirstline/study";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openFigure } from "../support/openFigure.js";
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

test("what the curve reads stays where it is pressed or the keys go, and opens its working there", async () => {
  const { page, complaints } = await visitCharts({ viewport: { width: 1440, height: 1000 } });
  const reads = page.locator("vacuum-chart chart-frame .reads");
  const plot = page.getByRole("slider", { name: /^Vacuum at the pump against the demand/ });
  await plot.focus();
  await page.keyboard.press("Home");
  for (let at = 0; at < 20; at++) await page.keyboard.press("ArrowRight");
  await until(async () => (await plot.getAttribute("aria-valuenow")) === "20");
  const [point] = curve(demo("heron.yaml")).points;
  const there = point?.clean?.vacuum.middle[20] ?? Number.NaN;
  const vacuum = await openFigure(page, reads.locator("button.why").nth(1));
  expect(vacuum.text).toBe(`${(there / 1000).toFixed(2)} kPa`);
  expect(vacuum.heading).toContain(`Vacuum ${quantity(there, "vacuum", "metric")}`);
  const demand = await openFigure(page, reads.locator("button.why").first());
  expect(demand.heading).toContain(`Demand at a point of the curve ${demand.text}`);
  await page.keyboard.press("Escape");
  await plot.focus();
  await page.keyboard.press("Escape");
  expect(await reads.textContent()).toContain("At the demand of the engine");
  await page.locator("vacuum-chart .u-over").click({ position: { x: 60, y: 80 } });
  await page.locator(".sentence").hover();
  expect(await reads.textContent()).toContain("Kept here");
  expect(complaints).toEqual([]);
}, 60_000);

test("what the charts of life and particles read opens its working, and so do pinned figures", async () => {
  const { page, complaints } = await visitCharts({ viewport: { width: 1440, height: 1000 } });
  const slider = page.getByRole("slider", { name: /against running time/ });
  await slider.focus();
  await page.keyboard.press("Home");
  for (let at = 0; at < 3; at++) await page.keyboard.press("PageUp");
  const reads = page.locator("life-panel .reads button.why");
  const pressure = await openFigure(page, reads.nth(1));
  expect(pressure.heading).toMatch(/^Feed pressure at a moment/);
  expect(Number.parseFloat(pressure.heading.slice("Feed pressure at a moment ".length))).toBeCloseTo(
    Number.parseFloat(pressure.text),
    0,
  );
  const counts = page.locator("particle-chart .reads button.why");
  await page.getByRole("slider", { name: /^Particles per mL/ }).focus();
  await page.keyboard.press("Home");
  const count = await openFigure(page, counts.first());
  expect(count.heading).toContain("Particles from 4 µm as delivered");
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Pin this" }).click();
  const row = page.locator("pinned-variants tr", { hasText: "Supply ceiling" });
  const pinned = await openFigure(page, row.locator("button.why").first());
  expect(pinned).toMatchObject({
    heading: expect.stringContaining(`Ceiling at change ${pinned.text}`),
    about: "Pinned as A: Heron, port engine.",
  });
  const between = await openFigure(page, page.locator("vacuum-chart .reads button.why").nth(2));
  expect(between.about).toContain("the nearest point worked out of its curve");
  expect(complaints).toEqual([]);
}, 60_000);

test("what the map reads opens its working there, where the keys have gone and where it was pressed", async () => {
  const { page, complaints } = await visitCharts({ viewport: { width: 1440, height: 1000 } });
  const system = demo("heron-finer.yaml");
  await page.getByRole("radio", { name: /Finer prefilter/ }).check({ force: true });
  const map = page.getByRole("slider", { name: /^Map of the ceilings/ });
  const reads = page.locator("cold-map .reads");
  await map.focus();
  await page.keyboard.press("Home");
  for (let at = 0; at < 12; at++) await page.keyboard.press("ArrowRight");
  await until(async () => (await map.getAttribute("aria-valuenow")) === "12");
  const { ceilings } = answerFor(system, { temperatures: [281.15] }).point;
  const [clean, starves] = [ceilings.clean.flow.low, ceilings.atChange.flow.low];
  const temperature = await openFigure(page, reads.locator("button.why").first());
  expect(temperature).toMatchObject({ text: "8 °C", heading: expect.stringContaining("Temperature 8 °C") });
  const room = await openFigure(page, reads.locator("button.why").nth(1));
  expect(room.text).toBe(quantity(clean, "flow", "metric"));
  expect(room.heading).toContain(`Ceiling clean, low end ${room.text}`);
  const least = await openFigure(page, reads.locator("button.why").nth(2));
  expect(least.text).toBe(quantity(starves, "flow", "metric"));
  expect(least.heading).toContain(`Ceiling at change, low end ${least.text}`);
  await map.click({ position: { x: 300, y: 100 } });
  await page.locator(".sentence").hover();
  expect(await reads.textContent()).toContain("At the temperature of the fuel");
  const pressed = await openFigure(page, reads.locator("button.why").nth(1));
  expect(pressed.text).not.toBe(room.text);
  expect(pressed.heading).toContain(`Ceiling clean, low end ${pressed.text}`);
  expect(complaints).toEqual([]);
}, 60_000);

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
