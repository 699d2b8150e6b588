import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { sourceAlias } from "../support/sourceAlias.mjs";

// What runs for minutes or hours, outside CI: `npm run soak`.
export default defineConfig({
  root: fileURLToPath(new URL("../..", import.meta.url)),
  resolve: { alias: sourceAlias },
  test: {
    include: ["tests/soak/*.soak.ts"],
    testTimeout: 2 ** 31 - 1,
    reporters: ["default"],
    disableConsoleIntercept: true,
  },
});
