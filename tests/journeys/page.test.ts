import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { bandText, plain, quantity, verdictSentence } from "@thirstline/study";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

const sentence = (page: Page) => page.locator(".sentence").textContent();

test("the built page opens under its title with the ferry's verdict, without a complaint", async () => {
  const { page, complaints } = await site.visit();
  await page.waitForLoadState("networkidle"); // what is fetched late may complain late
  expect(await page.title()).toBe("Thirstline");
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("Thirstline");
  const { answer, point } = answerFor(demo("heron.yaml"));
  expect(await sentence(page)).toBe(plain(verdictSentence(answer, point, "metric")));
  expect(complaints).toEqual([]);
});

test("the page shows the figures `thirstline check` gives for the same file", async () => {
  const { page } = await site.visit();
  const { point } = answerFor(demo("heron.yaml"));
  await page.locator("answer-figures dl").waitFor();
  const figures = (await page.locator("answer-figures dl").allInnerTexts()).join();
  expect(figures).toContain(bandText(point.vacuum, "vacuum", "metric"));
  expect(figures).toContain(bandText(point.ceilings.atChange.flow, "flow", "metric"));
  await page.getByText("Table of parts").click();
  const rows = await page.locator("parts-table tbody tr").allInnerTexts();
  const expected = [...point.suction, ...point.delivery].map(({ drop }) => quantity(drop ?? 0, "pressure", "metric"));
  expect(rows.map((row) => row.split("\t")[2])).toEqual(expected);
});

test("the finer prefilter at -10 degC starves the ferry, as its own file does", async () => {
  const { page } = await site.visit();
  await page.getByRole("radio", { name: /Finer prefilter/ }).check({ force: true });
  await page.getByRole("slider", { name: "Temperature of the fuel" }).fill("-10");
  const { answer, point } = answerFor(demo("heron-finer.yaml"), { temperatures: [263.15] });
  const due = plain(verdictSentence(answer, point, "metric")).replace(
    "Heron, port engine, finer prefilters",
    "Heron, port engine",
  );
  expect(await sentence(page)).toBe(due);
  expect(due).toContain("starves");
});

test("one switch turns every unit on the page, and the sliders with them", async () => {
  const { page } = await site.visit();
  await page.getByRole("radio", { name: "US" }).check({ force: true });
  const { answer, point } = answerFor(demo("heron.yaml"));
  expect(await sentence(page)).toBe(plain(verdictSentence(answer, point, "us")));
  const text = await page.locator("body").ariaSnapshot();
  expect(text).toContain("inHg");
  expect(text).not.toMatch(/\b(kPa|L\/h|mm²\/s|kg\/m³)/);
  await page.getByRole("slider", { name: "Temperature of the fuel" }).fill("14");
  expect(await sentence(page)).toContain("14 °F");
});

test("the demand slider asks what `check` answers for that demand", async () => {
  const { page } = await site.visit();
  await page.getByRole("slider", { name: "Demand of the engine", exact: true }).fill("420");
  const { answer, point } = answerFor(demo("heron.yaml"), { demand: 420e-3 / 3600 });
  expect(await sentence(page)).toBe(plain(verdictSentence(answer, point, "metric")));
});

test("every demonstration opens with its own verdict, without a complaint", async () => {
  const { page, complaints } = await site.visit();
  const demos = fileURLToPath(new URL("../../packages/spec/demo", import.meta.url));
  const files = readdirSync(demos).filter((file) => file.endsWith(".yaml"));
  expect(files.length).toBeGreaterThan(5);
  for (const file of files) {
    await page.getByLabel("Open an example").selectOption(file);
    const { answer, point } = answerFor(demo(file));
    expect(await sentence(page)).toBe(plain(verdictSentence(answer, point, "metric")));
  }
  expect(complaints).toEqual([]);
});

test("a step of the temperature slider reaches sentence and descent within a frame", async () => {
  const { page } = await site.visit();
  await page.waitForLoadState("networkidle");
  const spent = await page.evaluate(async () => {
    const sheet = document.querySelector("thirstline-page")?.shadowRoot?.querySelector("bench-sheet") as HTMLElement & {
      updateComplete: Promise<boolean>;
    };
    const root = sheet.shadowRoot
      ?.querySelector("place-controls")
      ?.shadowRoot?.querySelector("range-control")?.shadowRoot;
    const slider = root?.querySelector("input") as HTMLInputElement;
    const path = sheet.shadowRoot?.querySelector("fuel-path") as typeof sheet;
    const times: number[] = [];
    for (let step = 0; step < 30; step++) {
      slider.value = String(20 - step);
      const begun = performance.now();
      slider.dispatchEvent(new Event("input"));
      await sheet.updateComplete;
      await path.updateComplete;
      times.push(performance.now() - begun);
    }
    // The quickest quarter: what a busy machine adds is not the page's own.
    return times.sort((a, b) => a - b)[7] ?? Number.NaN;
  });
  expect(spent).toBeLessThan(16);
});

test.each([
  ["wide and light", { viewport: { width: 1440, height: 900 }, colorScheme: "light" }],
  ["narrow and dark", { viewport: { width: 390, height: 844 }, colorScheme: "dark" }],
] as const)("the page, %s, has no fault axe-core can find and does not scroll sideways", async (_, options) => {
  const { page } = await site.visit("", options);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByLabel("Open an example").selectOption("lorry.yaml");
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(options.viewport.width);
});

test("a page that logs an error and hides its language is caught doing so", async () => {
  const { page, complaints } = await site.visit();
  await page.evaluate(() => {
    document.documentElement.removeAttribute("lang");
    console.error("the tank is dry");
  });
  expect(complaints).toEqual(["console: the tank is dry"]);
  expect(await accessibilityFaults(page)).toEqual(["<html> element must have a lang attribute: html"]);
});

test("the browser speaks a language Intl knows", async () => {
  const { page } = await site.visit();
  expect(await page.evaluate(() => new Intl.NumberFormat(navigator.language).resolvedOptions().locale)).toBe("en-US");
});
