import { availableParallelism } from "node:os";
import { playwright } from "@vitest/browser-playwright";
import { defineConfig } from "vitest/config";
import { chromium } from "./tests/support/chromium.mjs";
import { sourceAlias } from "./tests/support/sourceAlias.js";

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
          include: ["tests/**/*.test.ts", "packages/*/src/**/*.test.ts", "playground/src/**/*.test.ts"],
          // Generous, because processes and browsers start slowly on a busy machine; no test waits for a clock to run out.
          testTimeout: 60_000,
          hookTimeout: 60_000,
          exclude: ["**/*.browser.test.ts", "**/node_modules/**"],
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
