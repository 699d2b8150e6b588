import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { sourceAlias } from "../tests/support/sourceAlias.mjs";
import { catalogue } from "./vite.catalogue.js";
import { examples } from "./vite.examples.js";
import { field } from "./vite.field.js";
import { licences } from "./vite.licences.js";
import { offline } from "./vite.offline.js";
import { policy } from "./vite.policy.js";

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  base: "./", // the built page works from any folder of any server
  resolve: { alias: sourceAlias },
  plugins: [examples(), catalogue(), field(), policy(), licences(), offline()],
  build: { modulePreload: { polyfill: false }, target: "es2022" },
  worker: { format: "es" },
});
