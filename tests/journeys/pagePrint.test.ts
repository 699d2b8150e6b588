import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { plain, verdictSentence } from "@thirstline/study";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerFor, demo } from "../support/pageAnswers.js";
import { openSite, type Site } from "../support/preview.js";
import { sentenceIs } from "../support/sheetPage.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

/** How many sheets a printed document takes. */
function sheets(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

test("every demonstration is printed on one sheet, A4 and Letter, soiled and tried finer too", async () => {
  const { page, complaints } = await site.visit();
  await page.getByRole("slider", { name: "Loaded, from clean to due" }).waitFor();
  const folder = fileURLToPath(new URL("../../packages/spec/demo", import.meta.url));
  const files = readdirSync(folder).filter((file) => file.endsWith(".yaml"));
  const printed: Record<string, number[]> = {};
  const print = async (name: string) => {
    printed[name] = [sheets(await page.pdf({ format: "A4" })), sheets(await page.pdf({ format: "Letter" }))];
  };
  for (const file of files) {
    await page.getByLabel("Open an example").selectOption(file);
    const { answer, point } = answerFor(demo(file));
    await sentenceIs(page, plain(verdictSentence(answer, point, "metric")));
    await print(file);
  }
  await page.getByLabel("Open an example").selectOption("heron.yaml");
  await page.getByRole("slider", { name: "Micron rating" }).fill("9");
  await page.getByRole("slider", { name: "Loaded, from clean to due" }).fill("50");
  await page.locator("fuel-path .descent.soiled").first().waitFor();
  await print("heron, tried");
  expect(printed).toEqual(Object.fromEntries([...files, "heron, tried"].map((file) => [file, [1, 1]])));
  expect(complaints).toEqual([]);
}, 60_000);
