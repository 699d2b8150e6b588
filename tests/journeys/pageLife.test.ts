import { life, lifeSentence, lifeTrace, plain, quantity } from "@thirstline/study";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";
import { savedText, until } from "../support/sheetPage.js";
import { thirstline } from "./cli/thirstline.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

async function visitLife(options = {}): Promise<{ page: Page; complaints: string[] }> {
  const visited = await site.visit("", options);
  await visited.page.locator("life-panel canvas").waitFor();
  return visited;
}

interface LifeJson {
  readonly end: { readonly time: { readonly value: number } };
  readonly spread: Readonly<Record<"low" | "middle" | "high", { readonly value: number }>> & {
    readonly atMost: { readonly chance: { readonly value: number } };
  };
}

test.concurrent("the life on the page is that of `thirstline life`: sentence, end, draws and chance", async () => {
  const { page, complaints } = await visitLife();
  const { stdout } = thirstline(["life", "heron.yaml", "--json"], { folder: "demo" });
  const [told] = (JSON.parse(stdout) as { answers: LifeJson[] }).answers;
  if (told === undefined) throw new Error("no answer");
  expect(await page.locator("life-panel p.said").first().textContent()).toBe(
    plain(lifeSentence(life(demo("heron.yaml")), "metric")),
  );
  const panel = page.locator("life-panel");
  await until(async () => !((await panel.locator(".chance").textContent()) ?? "drawing").includes("drawing"));
  const hours = (time: number) => quantity(time, "running time", "metric");
  const reads = (await panel.locator(".reads table").allInnerTexts()).join();
  expect(reads).toContain(hours(told.end.time.value));
  expect(reads).toContain(`${hours(told.spread.low.value)} to ${hours(told.spread.high.value)}`);
  expect(reads).toContain(hours(told.spread.middle.value));
  const words = await panel.locator(".chance").textContent();
  expect(words).toContain(`${(100 * told.spread.atMost.chance.value).toFixed(0)} %, give or take`);
  expect(complaints).toEqual([]);
});

test.concurrent("the figures saved from the chart over the hours are the trace of `life`, either gauge", async () => {
  const { page } = await visitLife();
  const answer = life(demo("heron.yaml"));
  const { end } = answer;
  // The page draws the trace finer than `life` tells it; what `thirstline life` tells are its ends.
  const trace = lifeTrace(demo("heron.yaml"), answer, 60, 0);
  const { stdout } = thirstline(["life", "heron.yaml", "--draws", "0", "--json"], { folder: "demo" });
  const told = JSON.parse(stdout).answers[0].trace;
  for (const [gauge, what, values] of [
    ["Feed pressure", "pressure at the injection pump", trace.feed],
    ["Vacuum", "vacuum at the pump", trace.vacuum],
  ] as const) {
    await page.getByRole("radio", { name: gauge }).check({ force: true });
    const text = await savedText(page, `Save ${what} against running time as CSV`);
    const rows = text
      .split("\r\n")
      .slice(1)
      .map((row) => row.split(",").map(Number));
    expect(rows).toHaveLength(trace.time.length);
    rows.forEach(([hour = Number.NaN, pressure = Number.NaN], at) => {
      expect(hour * 3600).toBeCloseTo(trace.time[at] ?? Number.NaN, -1);
      expect((pressure * 1000) / (values[at] ?? Number.NaN)).toBeCloseTo(1, 4);
    });
    expect((rows.at(-1)?.[0] ?? 0) * 3600).toBeCloseTo(end?.time ?? Number.NaN, -1);
    for (const at of [0, -1]) {
      const [, pressure = Number.NaN] = rows.at(at) ?? [];
      const due = told[gauge === "Vacuum" ? "vacuum" : "feed"].value.at(at);
      expect(Math.abs((pressure * 1000) / due - 1)).toBeLessThan(1e-4);
    }
  }
});

test.concurrent("the particles on the fuel's way are those of `life`, with what the injection pump asks for", async () => {
  const { page } = await visitLife();
  const { cleanliness, protection } = life(demo("heron.yaml"));
  const text = await savedText(page, "Save how clean the fuel is on its way as CSV");
  const rows = text
    .split("\r\n")
    .slice(1)
    .map((row) => row.split(","));
  expect(rows.map(([place, code]) => [place, code])).toEqual([
    ...cleanliness.map(({ place, code }) => [place, code]),
    ["asked for", protection?.code],
  ]);
  cleanliness.forEach(({ counts }, at) => {
    const shown = rows[at]?.slice(3).map(Number);
    for (const [size, count] of counts.entries()) expect(shown?.[size]).toBeCloseTo(count, 2);
  });
  const picture = await page.locator("particle-chart svg").textContent();
  for (const { code } of cleanliness) expect(picture).toContain(code);
  expect(picture).toContain(`at most, ${protection?.code}`);
});

test.concurrent("where life cannot say, its reasons stand there instead of an empty chart", async () => {
  const { page } = await visitLife();
  await page.getByLabel("Open an example").selectOption("dewatering.yaml");
  const said = page.locator("life-panel p.said").first();
  const due = plain(lifeSentence(life(demo("dewatering.yaml")), "metric"));
  await until(async () => (await said.textContent()) === due);
  expect(due).toContain("Cannot say");
  expect(await page.locator("life-panel chart-frame").count()).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
});

test.concurrent("a worker that dies over its work is told of plainly, and the work is done all the same", async () => {
  const { page, complaints } = await visitLife();
  for (const worker of page.workers()) {
    await worker.evaluate(() => {
      addEventListener("message", () => {
        throw new Error("out of memory");
      });
    });
  }
  await page.getByRole("slider", { name: "Altitude" }).fill("900");
  await page.getByText("What works this out stopped on the way; it was started again.").first().waitFor();
  const { spread, end } = life({ ...demo("heron.yaml"), altitude: 900 });
  expect([spread, end === null]).toEqual([null, false]);
  const due = plain(lifeSentence(life({ ...demo("heron.yaml"), altitude: 900 }), "metric"));
  expect(await page.locator("life-panel p.said").first().textContent()).toBe(due);
  await until(async () => !((await page.locator("life-panel .chance").textContent()) ?? "drawing").includes("drawing"));
  expect(complaints.filter((one) => !one.includes("out of memory"))).toEqual([]);
});
