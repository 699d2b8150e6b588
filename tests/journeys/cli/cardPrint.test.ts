import { readdirSync } from "node:fs";
import { type Browser, chromium as engine } from "playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { chromium } from "../../support/chromium.mjs";
import { FOLDERS, thirstline } from "./thirstline.js";

// A card is one sheet on a clip board: printed to PDF in a browser, as a workshop's printer would get it.

const files = readdirSync(FOLDERS.demo).filter((name) => name.endsWith(".yaml"));
let browser: Browser;

beforeAll(async () => {
  browser = await engine.launch(await chromium());
});
afterAll(async () => browser.close());

function pagesOf(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page(?!s)/g)?.length ?? 0;
}

describe.each(files)("thirstline card %s --html", (file) => {
  test.each(["metric", "us"])(
    "prints on one sheet of A4 and one of Letter (%s), in type that can be read",
    async (units) => {
      const { stdout, code } = thirstline(["card", file, "--html", "--units", units], { folder: "demo" });
      expect(code).toBe(0);
      const page = await browser.newPage();
      const asked: string[] = [];
      page.on("request", (request) => asked.push(request.url()));
      await page.setContent(stdout);
      const sheets = [];
      for (const format of ["A4", "Letter"]) sheets.push(pagesOf(await page.pdf({ format })));
      expect(sheets).toEqual([1, 1]);
      const points = await page.evaluate(() => (Number.parseFloat(getComputedStyle(document.body).fontSize) * 72) / 96);
      expect(points).toBeGreaterThanOrEqual(8);
      expect(asked).toEqual([]);
      // Boxes to tick are drawn, and nothing is cut off at the side.
      expect(await page.locator("li.step").count()).toBeGreaterThan(10);
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
      await page.close();
    },
  );
});

test("pagesOf(pdf) counts a second sheet", async () => {
  const page = await browser.newPage();
  await page.setContent('<p>one</p><p style="break-before: page">two</p>');
  expect(pagesOf(await page.pdf({ format: "A4" }))).toBe(2);
  await page.close();
});
