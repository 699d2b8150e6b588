import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import axe from "axe-core";
import { type BrowserContextOptions, type Page, chromium as playwright } from "playwright";
import { preview } from "vite";
import { chromium } from "./chromium.mjs";

const playground = fileURLToPath(new URL("../../playground", import.meta.url));
/** Where the built page stands; another folder than its own lets two builds be tested side by side. */
export const built = process.env.PAGE_BUILT ?? `${playground}/dist`;

/** A page under test and everything it has complained of so far. */
interface VisitedPage {
  page: Page;
  /** Console errors and warnings, uncaught exceptions and failed requests, in order. */
  complaints: string[];
}

/** The built page behind a server of its own, and a browser to visit it with. */
export interface Site {
  /** Where the page is served, with a slash at the end. */
  address: string;
  /** Opens `path` in a fresh context: no storage or cache is shared between visits. */
  visit(path?: string, options?: BrowserContextOptions): Promise<VisitedPage>;
  /** Stops browser and server. */
  close(): Promise<void>;
}

/**
 * Serves the built page on a free port and starts a browser.
 *
 * @param folder where the built page stands
 * @throws when the page has not been built
 * @example
 * const site = await openSite();
 * const { page, complaints } = await site.visit();
 */
export async function openSite(folder = built): Promise<Site> {
  if (!existsSync(`${folder}/index.html`)) throw new Error('no built page: run "npm run build:page" first');
  const server = await preview({
    root: playground,
    logLevel: "silent",
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 0 },
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error("the preview server has no local address");
  const browser = await playwright.launch(await chromium());
  return {
    address,
    async visit(path = "", options = {}) {
      const context = await browser.newContext(options);
      const page = await context.newPage();
      const complaints: string[] = [];
      page.on("console", (message) => {
        if (["error", "warning"].includes(message.type())) complaints.push(`console: ${message.text()}`);
      });
      page.on("pageerror", (error) => complaints.push(`exception: ${error.message}`));
      page.on("requestfailed", (request) => {
        const why = request.failure()?.errorText;
        // A page left while it still loads breaks off its own requests; nothing is wrong with those.
        if (why !== "net::ERR_ABORTED") complaints.push(`request: ${request.url()} ${why}`);
      });
      await page.goto(new URL(path, address).href);
      return { page, complaints };
    },
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

/**
 * What axe-core finds wrong with the page as it stands, one line a fault: the rule, then where.
 */
export async function accessibilityFaults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source); // evaluated by the debugger, so a content security policy does not refuse it
  const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run());
  return violations.map(({ help, nodes }) => `${help}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
}
