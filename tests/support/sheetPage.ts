import { readFile } from "node:fs/promises";
import type { BrowserContextOptions, Download, Page } from "playwright";
import type { Site } from "./preview.js";

/** Visits the page, until everything is on the sheet. */
export async function visitWhole(site: Site, options: BrowserContextOptions = {}): ReturnType<Site["visit"]> {
  const visited = await site.visit("", options);
  await visited.page.getByRole("button", { name: "Pin this" }).waitFor();
  return visited;
}

/** The sentence on top of the sheet. */
export const sentence = (page: Page) => page.locator(".sentence").textContent();

/** Waits until the sentence says so. */
export const sentenceIs = (page: Page, text: string) =>
  page.waitForFunction(
    (due) =>
      document
        .querySelector("thirstline-page")
        ?.shadowRoot?.querySelector("bench-sheet")
        ?.shadowRoot?.querySelector(".sentence")?.textContent === due,
    text,
  );

/** Names on the path, in order, without counts and figures. */
export async function pathNames(page: Page): Promise<string[]> {
  const names = await page.locator("fuel-path .names .name > span").allInnerTexts();
  return names.map((name) => name.replace(/ ×\d+|\s!/g, "").trim());
}

/** What a press on a button saves. */
export async function saved(page: Page, button: string): Promise<Download> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button, exact: true }).click(),
  ]);
  return download;
}

/** The same as text. */
export async function savedText(page: Page, button: string): Promise<string> {
  return readFile(await (await saved(page, button)).path(), "utf8");
}

/** Opens a file on the page, by its text. */
export const give = (page: Page, name: string, text: string) =>
  page
    .locator("file-desk input[type=file]")
    .setInputFiles({ name, mimeType: "application/yaml", buffer: Buffer.from(text) });

/** Waits until something is so, 15 s at the longest. */
export async function until(isSo: () => Promise<boolean>): Promise<void> {
  for (const end = Date.now() + 15_000; !(await isSo()); ) {
    if (Date.now() > end) throw new Error(`not so in time: ${isSo}`);
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
}

/** What a drawing that was saved holds, read as a document of its own. */
export async function drawingIn(page: Page, svg: string) {
  // A page of its own: this one's policy lets nothing be parsed.
  const blank = await page.context().newPage();
  const found = await blank.evaluate((text) => {
    const { documentElement } = new DOMParser().parseFromString(text, "image/svg+xml");
    return {
      root: documentElement.tagName,
      fault: documentElement.querySelector("parsererror")?.textContent ?? "",
      paths: [...documentElement.querySelectorAll("path")].filter((one) => (one.getAttribute("d") ?? "").length > 4)
        .length,
      words: [...documentElement.querySelectorAll("text")].map(({ textContent }) => textContent ?? ""),
    };
  }, svg);
  await blank.close();
  return found;
}
