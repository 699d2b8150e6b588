import { readFile } from "node:fs/promises";
import { readSystem } from "@thirstline/spec";
import { plain, verdictSentence } from "@thirstline/study";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";
import { read } from "../support/repository.js";
import { give, savedText, sentenceIs } from "../support/sheetPage.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

async function visitWhole(path = ""): Promise<{ page: Page; complaints: string[] }> {
  const visited = await site.visit(path);
  await visited.page.getByRole("button", { name: "Save the file" }).waitFor();
  return visited;
}

function said(file: string): string {
  const { answer, point } = answerFor(demo(file));
  return plain(verdictSentence(answer, point, "metric"));
}

test.concurrent("a file is opened with the verdict of `check`, and saved as a file that reads back as the same system", async () => {
  const { page, complaints } = await visitWhole();
  await give(page, "lorry.yaml", read("packages/spec/demo/lorry.yaml"));
  await sentenceIs(page, said("lorry.yaml"));
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the file" }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("depot-lorry.yaml");
  const back = readSystem(await readFile(await download.path(), "utf8"), { file: "depot-lorry.yaml" });
  expect("system" in back && back.system).toEqual(demo("lorry.yaml"));
  expect(complaints).toEqual([]);
});

test.concurrent("an example is saved as its own file to the byte, also when brought back; changed, it says that its comments go", async () => {
  const { page, complaints } = await visitWhole();
  const own = read("packages/spec/demo/generator.yaml");
  expect(own).toMatch(/^#|\s#/m);
  await page.getByLabel("Open an example").selectOption("generator.yaml");
  expect(await savedText(page, "Save the file")).toBe(own);
  await page.waitForFunction(() => localStorage.getItem("thirstline/1 sheet")?.includes("generator"));
  await page.reload();
  await page.getByText("Brought back what was on the sheet").waitFor();
  expect(await savedText(page, "Save the file")).toBe(own);
  expect(await page.locator("file-desk .said").textContent()).toBe("");
  await page.getByRole("button", { name: "Try it colder" }).click();
  const back = readSystem(await savedText(page, "Save the file"), { file: "generator.yaml" });
  const { temperature } = demo("generator.yaml");
  expect("system" in back && back.system).toEqual({ ...demo("generator.yaml"), temperature: temperature - 5 });
  await page.locator("file-desk .said", { hasText: "The comments of generator.yaml are not in it" }).waitFor();
  expect(complaints).toEqual([]);
});

test.concurrent("a file at fault changes nothing: every fault stands by its line, and the text can be put right there", async () => {
  const { page } = await visitWhole();
  const good = read("packages/spec/demo/lorry.yaml");
  const text = good.replace("length: 1.8 m", "length: 1.8").replace("grade: arctic", "grade: artic");
  await give(page, "lorry.yaml", text);
  const faults = page.locator("file-faults li");
  await faults.first().waitFor();
  const due = readSystem(text, { file: "lorry.yaml" });
  const messages = "faults" in due ? due.faults.map(({ message }) => message) : [];
  expect(messages).toHaveLength(2);
  const shown = await faults.allInnerTexts();
  for (const [at, message] of messages.entries()) expect(shown[at]).toContain(message);
  expect(shown[1]).toContain("length: 1.8,");
  expect(await page.locator(".sentence").textContent()).toBe(said("heron.yaml"));
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByLabel("The text, to put it right here").fill(good);
  await page.getByRole("button", { name: "Read it again" }).click();
  await sentenceIs(page, said("lorry.yaml"));
  await page.locator("file-faults").waitFor({ state: "detached" });
});

test.concurrent("a file let go over the page is opened", async () => {
  const { page } = await visitWhole();
  await page.evaluate((text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], "crane.yaml"));
    window.dispatchEvent(new DragEvent("drop", { dataTransfer, cancelable: true }));
  }, read("packages/spec/demo/crane.yaml"));
  await sentenceIs(page, said("crane.yaml"));
});

test.concurrent("a link holds the whole system behind the #, and opens as the same", async () => {
  const { page } = await visitWhole();
  await page.getByLabel("Open an example").selectOption("workboat.yaml");
  await page.getByRole("button", { name: "Copy a link" }).click();
  const link = await page.getByLabel("Link to this system").inputValue();
  expect(link).toMatch(/#s=[A-Za-z0-9_-]+$/);
  expect(link.length).toBeLessThan(2500);
  const other = await visitWhole(link.slice(link.indexOf("#")));
  await sentenceIs(other.page, said("workboat.yaml"));
  expect(new URL(other.page.url()).hash).toBe("");
  expect(other.complaints).toEqual([]);
});

test.concurrent.each([
  ["damaged", "#s=AAAA", "damaged or cut short"],
  ["of foreign letters", "#s=%3Cscript%3E", "damaged or cut short"],
  ["too long", `#s=${"A".repeat(9000)}`, "longer than any this page makes"],
])("a link that is %s is refused with a plain word", async (_, fragment, words) => {
  const { page, complaints } = await visitWhole(fragment);
  await page.locator("file-desk .said", { hasText: words }).waitFor();
  expect(await page.locator(".sentence").textContent()).toBe(said("heron.yaml"));
  expect(complaints).toEqual([]);
});

test.concurrent("a link that unfolds without end is stopped and refused", async () => {
  const { page } = await visitWhole();
  await page.evaluate(async () => {
    const stream = new Blob([new Uint8Array(3_000_000)]).stream().pipeThrough(new CompressionStream("deflate-raw"));
    const packed = new Uint8Array(await new Response(stream).arrayBuffer());
    location.hash = `s=${btoa(String.fromCharCode(...packed))
      .replaceAll("+", "-")
      .replaceAll("/", "_")
      .replaceAll("=", "")}`;
  });
  await page.locator("file-desk .said", { hasText: "more than a system file may hold" }).waitFor();
});

test.concurrent("a link to something that is no system is refused on its line", async () => {
  const { page } = await visitWhole();
  await page.evaluate(async () => {
    const stream = new Blob(["name: <img src=x onerror=alert(1)>\n"])
      .stream()
      .pipeThrough(new CompressionStream("deflate-raw"));
    const packed = new Uint8Array(await new Response(stream).arrayBuffer());
    location.hash = `s=${btoa(String.fromCharCode(...packed))
      .replaceAll("+", "-")
      .replaceAll("/", "_")
      .replaceAll("=", "")}`;
  });
  await page.getByRole("heading", { name: /the link was not opened/ }).waitFor();
  expect(await page.locator(".sentence").textContent()).toBe(said("heron.yaml"));
});

test.concurrent("what was on the sheet is brought back, and can be left for the ferry", async () => {
  const { page } = await visitWhole();
  await page.getByLabel("Open an example").selectOption("crane.yaml");
  await page.waitForFunction(() => localStorage.length > 0);
  await page.reload();
  await sentenceIs(page, said("crane.yaml"));
  await page.getByText("Brought back what was on the sheet").waitFor();
  await page.getByRole("button", { name: "Begin with the ferry" }).click();
  await sentenceIs(page, said("heron.yaml"));
});

test.concurrent("what was kept but cannot be read is passed over", async () => {
  const { page, complaints } = await visitWhole();
  await page.evaluate(() =>
    localStorage.setItem("thirstline/1 sheet", '{"system":{"format":"thirstline/1","suction":7}}'),
  );
  await page.reload();
  await sentenceIs(page, said("heron.yaml"));
  expect(complaints).toEqual([]);
});
