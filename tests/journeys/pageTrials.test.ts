import type { System, SystemPart } from "@thirstline/spec";
import { life, plain, quantity, verdictSentence } from "@thirstline/study";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";
import { read } from "../support/repository.js";
import { give, pathNames, saved, savedText, sentence, sentenceIs, until } from "../support/sheetPage.js";
import { thirstline } from "./cli/thirstline.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

async function visitWhole(options = {}): Promise<{ page: Page; complaints: string[] }> {
  const visited = await site.visit("", options);
  await visited.page.getByRole("slider", { name: "Loaded, from clean to due" }).waitFor();
  return visited;
}

function said(system: System): string {
  const { answer, point } = answerFor(system);
  return plain(verdictSentence(answer, point, "metric"));
}

/** The ferry with every filter of these names changed. */
function withFilters(system: System, change: (part: Extract<SystemPart, { part: "filter" }>) => SystemPart): System {
  const all = (parts: readonly SystemPart[]): SystemPart[] =>
    parts.map((part) => {
      if (part.part === "bank") return { ...part, branches: part.branches.map(all) };
      return part.part === "filter" ? change(part) : part;
    });
  return { ...system, suction: all(system.suction), delivery: all(system.delivery ?? []) };
}

test.concurrent("a third branch lets the vacuum fall, to the figure of the command line for the saved file", async () => {
  const { page, complaints } = await visitWhole();
  const before = answerFor(demo("heron.yaml")).point.vacuum.middle;
  await page.getByRole("button", { name: "One branch more" }).click();
  expect((await pathNames(page)).slice(4, 8)).toEqual(["3 in parallel", "prefilter A", "prefilter B", "prefilter C"]);
  const file = await savedText(page, "Save the file");
  const { stdout } = thirstline(["check", "-", "--json"], { folder: "demo", input: file });
  const vacuum = JSON.parse(stdout).answers[0].points[0].vacuum.middle.value as number;
  expect(vacuum).toBeLessThan(before);
  const shown = (await page.locator("answer-figures dl").allInnerTexts()).join();
  expect(shown).toContain(quantity(vacuum, "vacuum", "metric"));
  await page.getByRole("spinbutton", { name: "Number of branches" }).fill("1");
  await page.getByRole("spinbutton", { name: "Number of branches" }).blur();
  expect((await pathNames(page)).slice(3, 6)).toEqual(["rise", "prefilter A", "pump line"]);
  expect(complaints).toEqual([]);
});

test.concurrent("a finer size scales the flow test by its square, is called assumed everywhere, and comes back", async () => {
  const { page } = await visitWhole();
  await page.getByRole("slider", { name: "Micron rating" }).fill("5");
  const finer = withFilters(demo("heron.yaml"), (filter) => {
    if (filter.name !== "fine filter" || filter.medium.by !== "flow test") return filter;
    return {
      ...filter,
      medium: { ...filter.medium, points: filter.medium.points.map((one) => ({ ...one, drop: 4 * one.drop })) },
    };
  });
  await sentenceIs(page, said(finer));
  const words = "fine filter at 5 µm, scaled from its flow test at 10 µm by the square of the size";
  expect(await page.locator(".assumed").textContent()).toContain(words);
  const file = await savedText(page, "Save the file");
  expect(file.split("\n")[0]).toBe(`# Assumed, not tested: ${words}.`);
  await page.getByRole("button", { name: "Undo" }).click();
  expect(await page.locator(".assumed").count()).toBe(0);
  await give(page, "finer.yaml", file);
  await page.getByText(`Assumed in finer.yaml, not tested: ${words}.`).waitFor();
  await page.getByLabel("Micron rating, exactly").fill("200 um");
  await page.getByLabel("Micron rating, exactly").blur();
  await page.getByText(/^Sizes from 2\.\d+ µm to .* can be tried/).waitFor();
  expect(await sentence(page)).toBe(said(finer));
});

test.concurrent("soil closes the filters as life predicts, and the path shows both lines by name", async () => {
  const { page } = await visitWhole();
  await page.getByRole("slider", { name: "Loaded, from clean to due" }).fill("100");
  const due = new Map(life(demo("heron.yaml")).elements.map(({ name, restriction }) => [name, restriction]));
  const soiled = withFilters(demo("heron.yaml"), (filter) => ({
    ...filter,
    restriction: Number((due.get(filter.name) ?? 1).toPrecision(9)),
  }));
  await sentenceIs(page, said(soiled));
  expect(await page.locator("fuel-path .descent.soiled").count()).toBe(2);
  expect(await page.locator("fuel-path .end-name").allTextContents()).toEqual(["clean", "now", "clean", "now"]);
  const csv = await savedText(page, "Save path and descent as CSV");
  const { asTheyAre } = answerFor(soiled).point;
  const last = csv.split("\r\n").at(-1)?.split(",").map(Number);
  expect(last?.[5]).toBeCloseTo((asTheyAre?.delivery.at(-1)?.pressure ?? Number.NaN) / 1000, 2);
  expect(await accessibilityFaults(page)).toEqual([]);
});

test.concurrent("units stay chosen on the device", async () => {
  const { page } = await visitWhole();
  await page.getByRole("radio", { name: "US" }).check({ force: true });
  await page.reload();
  const { answer, point } = answerFor(demo("heron.yaml"));
  await sentenceIs(page, plain(verdictSentence(answer, point, "us")));
});

test.concurrent("what an example's file does not say is told, as for an opened file", async () => {
  const { page } = await visitWhole();
  await page.getByLabel("Open an example").selectOption("lorry.yaml");
  const told = await page.locator(".notice").textContent();
  expect(told).toContain("Taken for granted in lorry.yaml:");
  await give(page, "lorry.yaml", read("packages/spec/demo/lorry.yaml"));
  expect(await page.locator(".notice").textContent()).toBe(told);
});

test.concurrent("an opened file is given back to the byte while nothing is changed, also after a reload and an undo", async () => {
  const { page } = await visitWhole();
  const text = `\uFEFF${read("packages/spec/demo/crane.yaml").replaceAll("\n", "\r\n")}`;
  await give(page, "crane.yaml", text);
  await page.locator(".sentence", { hasText: "Yard crane" }).waitFor();
  expect(await savedText(page, "Save the file")).toBe(text);
  await page.getByRole("slider", { name: "Altitude" }).fill("500");
  expect(await savedText(page, "Save the file")).not.toContain("#");
  await page.getByText("The comments of crane.yaml are not in it").waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await page.waitForTimeout(500); // what is on the sheet is kept a moment after a change
  await page.reload();
  await page.locator(".sentence", { hasText: "Yard crane" }).waitFor();
  await page.getByRole("button", { name: "Save the file" }).waitFor();
  const back = await saved(page, "Save the file");
  expect(back.suggestedFilename()).toBe("yard-crane.yaml");
  await until(async () => (await savedText(page, "Save the file")) === text);
});
