import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { built, openSite, type Site } from "../support/preview.js";
import { read } from "../support/repository.js";
import { savedText, sentence, until, visitWhole } from "../support/sheetPage.js";

/** Each of these starts the page several times. */
const LONG = 60_000;

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

const atTemperature = async (page: Page, degrees: string) => {
  await page.getByRole("slider", { name: "Temperature of the fuel" }).fill(degrees);
  await until(async () => ((await sentence(page)) ?? "").includes(`${degrees} °C`));
};

test.concurrent.each([
  ["refused", "SecurityError"],
  ["full", "QuotaExceededError"],
])(
  "where the browser's storage is %s the sheet works, says once that nothing is kept, and is saved",
  async (_, name) => {
    const { page, complaints } = await visitWhole(site);
    await page.evaluate((fault) => {
      Storage.prototype.setItem = () => {
        throw new DOMException("no", fault);
      };
    }, name);
    await atTemperature(page, "7");
    const told = page.getByText("This browser keeps nothing: save the file before you close the page.");
    await told.waitFor();
    await page.getByRole("button", { name: "Good" }).click();
    await atTemperature(page, "4");
    await page.waitForTimeout(1000); // longer than a change waits to be kept
    expect(await told.count()).toBe(0);
    expect(await savedText(page, "Save the file")).toContain("temperature: 4 degC");
    expect(complaints).toEqual([]);
  },
  LONG,
);

test.concurrent(
  "a catalogue the browser cannot keep is used all the same, and that it is not kept is told",
  async () => {
    const { page } = await site.visit("");
    await page.addInitScript(() => {
      const refuse = () => {
        throw new DOMException("no", "QuotaExceededError");
      };
      Object.defineProperty(globalThis, "indexedDB", { value: { open: refuse, deleteDatabase: refuse } });
    });
    await page.goto(`${site.address}#choose/size`);
    await page.reload();
    const buffer = Buffer.from(read("packages/spec/demo/elements.csv"));
    await page
      .locator("catalogue-desk input[type=file]")
      .setInputFiles({ name: "own.csv", mimeType: "text/csv", buffer });
    await page.getByText("This browser keeps nothing, so it is there until the page is closed.").waitFor();
    await page.getByText("own.csv").first().waitFor();
  },
  LONG,
);

test.concurrent(
  "a worker that dies over a search is told of plainly, and the search works when asked again",
  async () => {
    const { page } = await site.visit("#choose/size");
    await page.addInitScript(() => {
      const Real = Worker;
      let died = false;
      globalThis.Worker = class extends Real {
        constructor(url: string | URL, options?: WorkerOptions) {
          super(url, options);
          if (died || !String(url).includes("choose")) return;
          died = true;
          const die = () => {
            this.terminate();
            this.dispatchEvent(new ErrorEvent("error", { message: "out of memory" }));
          };
          this.addEventListener("message", () => setTimeout(die), { once: true });
        }
      };
    });
    await page.reload();
    await page.getByRole("button", { name: "Look for arrangements" }).click();
    await page.getByText("what works this out stopped on the way; try it once more").first().waitFor();
    await page.getByRole("button", { name: "Look for arrangements" }).click();
    await page.locator("size-table tbody tr").first().waitFor();
  },
  LONG,
);

test(
  "a new version of the page waits until the one being worked on is closed, and brings its sheet back",
  async () => {
    const folder = mkdtempSync(join(tmpdir(), "page-"));
    cpSync(built, folder, { recursive: true });
    const own = await openSite(folder);
    try {
      const { page, complaints } = await visitWhole(own);
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await page.reload();
      await page.getByRole("button", { name: "Pin this" }).waitFor();
      await atTemperature(page, "7");
      const changed = await sentence(page);

      publish(folder);
      await page.evaluate(async () => {
        const registration = await navigator.serviceWorker.ready;
        await registration.update();
      });
      await until(() => page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null));
      expect(await sentence(page)).toBe(changed);
      // What the old version fetches late is no longer on the server; it has it all the same.
      await page.getByRole("link", { name: "Choose an element" }).click();
      await page.locator("choose-view").waitFor();
      await page.goBack();
      await page.reload();
      expect(await page.title()).not.toBe("the new version");
      expect(await sentence(page)).toBe(changed);
      expect(complaints).toEqual([]);

      const context = page.context();
      await page.close();
      let next = await context.newPage();
      await until(async () => {
        await next.close();
        next = await context.newPage();
        await next.goto(own.address);
        return (await next.title()) === "the new version";
      });
      expect(await next.evaluate(() => localStorage.getItem("thirstline/1 sheet"))).toContain('"temperature":280.15');
    } finally {
      await own.close();
      rmSync(folder, { recursive: true });
    }
  },
  LONG,
);

test(
  "the licences of what the page is made with are a link away, without a network too",
  async () => {
    const { page, complaints } = await site.visit("#formulas");
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.reload();
    await page.context().setOffline(true);
    const [opened] = await Promise.all([
      page.waitForEvent("popup"),
      page.getByRole("link", { name: "Licences of the works this page is made with" }).click(),
    ]);
    const text = await opened.locator("pre").textContent();
    for (const name of ["SIL OPEN FONT LICENSE", "stix-two-math", "lit 3", "mathjs 15", "zod 4", "uplot 1"]) {
      expect(text).toContain(name);
    }
    expect(complaints).toEqual([]);
  },
  LONG,
);

/** Puts another version in the built page's place: other files under other names, as a new build has them. */
function publish(folder: string): void {
  const assets = join(folder, "assets");
  for (const file of readdirSync(assets)) rmSync(join(assets, file));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>the new version</title>");
  const worker = readFileSync(join(folder, "sw.js"), "utf8");
  const next = worker.replace(/version = "[^"]*"/, 'version = "next"').replace(/files = \[[^\]]*\]/, 'files = ["./"]');
  expect(next).not.toBe(worker);
  writeFileSync(join(folder, "sw.js"), next);
}
