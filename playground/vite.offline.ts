import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

const script = fileURLToPath(new URL("offline.js", import.meta.url));
const folder = fileURLToPath(new URL("public/", import.meta.url));

/** Adds the service worker to a build, with the names of all files of the page and a version that follows their content. */
export function offline(): Plugin {
  return {
    name: "offline",
    apply: "build",
    enforce: "post",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const hash = createHash("sha256");
        for (const file of Object.values(bundle)) hash.update("code" in file ? file.code : file.source);
        const publics = readdirSync(folder);
        for (const file of publics) hash.update(readFileSync(folder + file));
        // Older browsers' fonts and the page under its second name would only be kept twice.
        const names = [...Object.keys(bundle), ...publics].filter((name) => !/\.(woff|map|html)$/.test(name));
        const source = readFileSync(script, "utf8")
          .replace('"VERSION"', JSON.stringify(hash.digest("hex").slice(0, 16)))
          .replace('["FILES"]', JSON.stringify(["./", ...names.sort().map((name) => `./${name}`)]));
        this.emitFile({ type: "asset", fileName: "sw.js", source });
      },
    },
  };
}
