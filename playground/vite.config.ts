import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { sourceAlias } from "../tests/support/sourceAlias.js";

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  base: "./", // the built page works from any folder of any server
  resolve: { alias: sourceAlias },
});
