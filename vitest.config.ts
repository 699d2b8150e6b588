import { availableParallelism } from "node:os";
import { playwright } from "@vitest/browser-playwright";
import { defineConfig } from "vitest/config";
import { chromium } from "./tests/support/chromium.mjs";
import { sourceAlias } from "./tests/support/sourceAlias.mjs";

const resolve = { alias: sourceAlias };

export default defineConfig({
  test: {
    // Left to itself the runner keeps one of two cores free.
    maxWorkers: availableParallelism(),
    projects: [
      {
        resolve,
        test: {
          name: "node",
          setupFiles: ["tests/support/propertySeed.ts"],
          include: ["tests/properties/**/*.test.ts", "tests/journeys/**/*.test.ts"],
          // Generous, because processes and browsers start slowly on a busy machine; no test waits for a clock to run out.
          testTimeout: 60_000,
          hookTimeout: 60_000,
          exclude: ["**/*.browser.test.ts", "**/node_modules/**"],
        },
      },
      {
        resolve,
        test: {
          name: "unit",
          setupFiles: ["tests/support/propertySeed.ts"],
          include: [
            "packages/*/src/**/*.test.ts",
            "playground/src/**/*.test.ts",
            "tests/published/**/*.test.ts",
            "tests/house/**/*.test.ts",
          ],
          exclude: ["**/*.browser.test.ts", "**/node_modules/**"],
          // Nothing here leaves anything behind in a module, so what they share is loaded once and not 160 times.
          isolate: false,
          testTimeout: 60_000,
        },
      },
      {
        resolve,
        // Named here because a dependency first met in the middle of a run reloads the page under the tests.
        optimizeDeps: { include: ["axe-core", "lit", "lit/decorators.js", "uplot", "zod"] },
        test: {
          name: "browser",
          include: ["playground/src/**/*.browser.test.ts"],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions: await chromium() }),
            instances: [{ browser: "chromium" }],
          },
        },
      },
    ],
  },
});
