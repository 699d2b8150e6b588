import { readFile } from "node:fs/promises";
import { curve, plain, quantity, verdictSentence } from "@thirstline/study";
import type { Download, Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";

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
  return visited;
}

async function saved(page: Page, button: string): Promise<Download> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button }).click(),
  ]);
  return download;
}

test.concurrent("the figures saved from the chart are those of `thirstline curve`", async () => {
  const { page, complaints } = await visitCharts();
  const download = await saved(page, "Save the figures");
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

test.concurrent("the picture saved from the chart is a PNG file with something on it", async () => {
  const { page } = await visitCharts();
  const bytes = await readFile(await (await saved(page, "Save the picture")).path());
  expect(bytes.subarray(1, 4).toString()).toBe("PNG");
  expect(bytes.length).toBeGreaterThan(5000);
});

test.concurrent("the chart reads at the pointer, and at the demand when the pointer has left", async () => {
  const { page } = await visitCharts();
  const reads = page.locator("vacuum-chart .reads table");
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
  ["Demand of the engine, exactly", "90 gal/h", "341 L/h"],
  ["Altitude, exactly", "1000 ft", "305 m"],
])("%s takes %s", async (label, typed, shown) => {
  const { page } = await site.visit();
  const box = page.getByLabel(label);
  await box.fill(typed);
  await box.blur();
  await page.waitForFunction(
    ([wanted]) => {
      const sheet = document.querySelector("thirstline-page")?.shadowRoot?.querySelector("bench-sheet")?.shadowRoot;
      const inputs = [...(sheet?.querySelector("place-controls")?.shadowRoot?.querySelectorAll("range-control") ?? [])];
      const texts = inputs.map(
        (one) => one.shadowRoot?.querySelector("quantity-field")?.shadowRoot?.querySelector("input")?.value ?? "",
      );
      return texts.some((text) => Math.abs(Number.parseFloat(text) - Number.parseFloat(wanted ?? "")) < 0.5);
    },
    [shown],
  );
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
    await page.getByText("Table of the curve").click();
    expect(await accessibilityFaults(page)).toEqual([]);
  },
);
