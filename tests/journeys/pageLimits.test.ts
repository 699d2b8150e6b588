import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { plain, verdictSentence } from "@thirstline/study";
import { preview } from "vite";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, built, openSite, type Site } from "../support/preview.js";
import { read } from "../support/repository.js";
import { visitWhole } from "../support/sheetPage.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

/** Bytes before the path is on the page: markup, style and code gzipped, fonts as they are. */
const CEILING = 100_000;

test("the page fetches less than 100 kB, fonts included, before the path is painted", async () => {
  const { page } = await site.visit();
  await page.getByRole("button", { name: "Pin this" }).waitFor();
  const early = await page.evaluate(() => {
    const painted = performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? 0;
    const resources = performance.getEntriesByType("resource").filter(({ startTime }) => startTime <= painted);
    return [location.href, ...resources.map(({ name }) => name)];
  });
  expect(early.some((name) => name.endsWith(".js"))).toBe(true);
  expect(early.some((name) => name.includes("rest-of-sheet"))).toBe(false);
  const sizes = await Promise.all(
    early.map(async (name) => {
      const body = Buffer.from(await (await fetch(name)).arrayBuffer());
      return { name, bytes: /woff2/.test(name) ? body.length : gzipSync(body).length };
    }),
  );
  const sum = sizes.reduce((total, { bytes }) => total + bytes, 0);
  expect(sum, JSON.stringify(sizes)).toBeLessThan(CEILING);
});

/**
 * Longest from a slider's step to sentence and descent laid out anew, at a quarter of the machine's speed, ms, median of 15.
 * Meant to be one frame, 16 ms, on a machine at rest, where it took 14 to 17 ms on two cores (90 % of steps 18 to 22); the
 * browser's own painting comes on top, 13 ms there. With others at work it takes two to three times as long, so this only
 * catches work that creeps back in front of them.
 */
const STEP_CEILING = 250;

test("a slider's step changes sentence and descent before anything else, and the rest once they are painted", async () => {
  const { page } = await visitWhole(site, { viewport: { width: 1440, height: 900 } });
  await page.locator("cold-map svg").waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  const steps = await page.getByLabel("Temperature of the fuel", { exact: true }).evaluate(async (slider) => {
    type Element = HTMLElement & { updateComplete: Promise<boolean> };
    const within = (root: Element | null | undefined, tag: string) => root?.shadowRoot?.querySelector<Element>(tag);
    const bench = within(document.querySelector<Element>("thirstline-page"), "bench-sheet");
    const path = within(bench, "fuel-path");
    const shown = () => [within(bench, ".sentence")?.textContent, within(path, ".descent")?.getAttribute("d")];
    const rest = () =>
      [within(path, ".names"), within(within(bench, "answer-figures"), "dl")].map((one) => one?.textContent);
    const frame = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    const found: { ms: number; changed: boolean[]; early: boolean; followed: boolean }[] = [];
    for (let at = 0; at < 15; at++) {
      await frame();
      await frame();
      const [before, restBefore] = [shown(), rest()];
      const start = performance.now();
      (slider as HTMLInputElement).value = String(at % 2 === 0 ? -8 - at : 8 + at);
      slider.dispatchEvent(new Event("input", { bubbles: true, composed: true }));
      await bench?.updateComplete;
      await path?.updateComplete;
      path?.getBoundingClientRect(); // has styles and layout worked out now
      const ms = performance.now() - start;
      const changed = shown().map((one, place) => one !== before[place]);
      const followed = () => rest().map((one, place) => one !== restBefore[place]);
      const early = followed().some(Boolean);
      for (let waited = 0; waited < 20 && !followed().every(Boolean); waited++) await frame();
      found.push({ ms, changed, early, followed: followed().every(Boolean) });
    }
    return found;
  });
  for (const { changed, early, followed } of steps) {
    expect({ changed, early, followed }).toEqual({ changed: [true, true], early: false, followed: true });
  }
  const [median = Infinity] = steps
    .map(({ ms }) => ms)
    .sort((a, b) => a - b)
    .slice(7);
  expect(median).toBeLessThan(STEP_CEILING);
});

test.concurrent("the page asks no other place for anything, and works under a policy without inline or evaluated code", async () => {
  const { page, complaints } = await visitWhole(site);
  const strangers: string[] = [];
  page.on("request", (request) => {
    if (!request.url().startsWith(site.address) && !/^(data|blob):/.test(request.url())) strangers.push(request.url());
  });
  await page.reload();
  await page.getByRole("button", { name: "Pin this" }).waitFor();
  await page.getByLabel("Altitude, exactly").fill("1000 ft"); // fetches the units
  await page.getByLabel("Altitude, exactly").blur();
  await page.locator("file-desk input[type=file]").setInputFiles({
    name: "crane.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from(read("packages/spec/demo/crane.yaml")),
  });
  await page.locator(".sentence", { hasText: "Yard crane" }).waitFor();
  expect(strangers).toEqual([]);
  expect(complaints).toEqual([]);
  const policy = await page.locator("meta[http-equiv=Content-Security-Policy]").getAttribute("content");
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe/);
  const refused = await page.evaluate(() => {
    const script = document.createElement("script");
    try {
      script.textContent = "document.title = 'taken over'";
      document.body.append(script);
    } catch {
      return "refused";
    }
    return document.title;
  });
  expect(refused).not.toBe("taken over");
});

test("after one visit the whole page works with its server gone", async () => {
  const root = fileURLToPath(new URL("../../playground", import.meta.url));
  const server = await preview({
    root,
    logLevel: "silent",
    build: { outDir: built },
    preview: { host: "127.0.0.1", port: 0 },
  });
  const { page, complaints } = await site.visit(server.resolvedUrls?.local[0] ?? "");
  await page.getByRole("button", { name: "Pin this" }).waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  // Really gone: a browser told to be offline may still answer from its own cache.
  const closed = server.close();
  if ("closeAllConnections" in server.httpServer) server.httpServer.closeAllConnections();
  await closed;
  await page.reload();
  await page.getByRole("button", { name: "Pin this" }).waitFor();
  await page.locator("cold-map svg").waitFor();
  await page.locator("file-desk input[type=file]").setInputFiles({
    name: "lorry.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from(read("packages/spec/demo/lorry.yaml")),
  });
  const { answer, point } = answerFor(demo("lorry.yaml"));
  await page.locator(".sentence", { hasText: "Depot lorry" }).waitFor();
  expect(await page.locator(".sentence").textContent()).toBe(plain(verdictSentence(answer, point, "metric")));
  expect(complaints).toEqual([]);
});

test.concurrent.each([320, 600, 1024, 2560])("at %i px wide nothing runs out of the page", async (width) => {
  const { page } = await visitWhole(site, { viewport: { width, height: 900 } });
  await page.getByRole("button", { name: /^prefilter A/ }).click();
  await page.getByRole("button", { name: "Pin this" }).click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  const outside = await page.evaluate(() => {
    const path = document
      .querySelector("thirstline-page")
      ?.shadowRoot?.querySelector("bench-sheet")
      ?.shadowRoot?.querySelector("fuel-path")?.shadowRoot;
    const boxes = [...(path?.querySelectorAll(".name") ?? [])].map((one) => one.getBoundingClientRect());
    return boxes.filter(({ left, right }) => left < 0 || right > innerWidth).length;
  });
  expect(outside).toBe(0);
});

test.concurrent.each([
  ["forced colours", { forcedColors: "active" }],
  ["more contrast", { contrast: "more" }],
  ["more contrast in the dark", { contrast: "more", colorScheme: "dark" }],
  ["less motion", { reducedMotion: "reduce" }],
] as const)("with %s the page has no fault axe-core can find", async (_, options) => {
  const { page } = await visitWhole(site, options);
  await page.getByRole("button", { name: /^fine filter/ }).click();
  await page.getByText("Table of parts").click();
  expect(await accessibilityFaults(page)).toEqual([]);
});

test.concurrent("with less motion nothing eases", async () => {
  const { page } = await visitWhole(site, { reducedMotion: "reduce" });
  const eased = await page
    .locator("fuel-path .descent")
    .first()
    .evaluate((one) => getComputedStyle(one).transitionDuration);
  expect(eased).toBe("0s");
});

test.concurrent("on paper the sheet holds sentence, path, table of parts, cautions, file name and link, and no controls", async () => {
  const { page } = await visitWhole(site);
  await page.evaluate(() => {
    window.print = () => window.dispatchEvent(new Event("beforeprint"));
  });
  await page.getByRole("button", { name: "Print the sheet" }).click();
  await page.emulateMedia({ media: "print" });
  const paper = page.locator(".on-paper");
  await paper.filter({ hasText: "#s=" }).waitFor();
  expect(await paper.textContent()).toContain("heron-port-engine.yaml, printed on");
  for (const seen of [".sentence", "fuel-path svg", "vacuum-chart canvas", "parts-table table", "caution-list li"]) {
    expect(await page.locator(seen).first().isVisible(), seen).toBe(true);
  }
  for (const hidden of ["range-control", "file-desk button", "cold-map", ".gap"]) {
    expect(await page.locator(hidden).first().isVisible(), hidden).toBe(false);
  }
  expect(await page.locator("fuel-path svg").getAttribute("width")).toBe("760");
});
