import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "vite";
import { sourceAlias } from "../support/sourceAlias.mjs";
import { bundle, target } from "./target.mjs";

// Run by Stryker in its own copy of the repository, after it has planted its mutants: puts the tests and the sources under
// them into one file, which the runner loads once. Packages stay outside.
const root = fileURLToPath(new URL("../..", import.meta.url));
const registry = fileURLToPath(new URL("registry.mjs", import.meta.url));
const fewer = fileURLToPath(new URL("fewerCases.mjs", import.meta.url));
const entry = "\0tests";

/** The tests in order, as imports. */
function tests() {
  const [wanted, unwanted] = [true, false].map((kept) => target.tests.filter((glob) => !glob.startsWith("!") === kept));
  const rooted = (/** @type {string} */ glob) => [
    `/${glob}`,
    ...(unwanted ?? []).map((other) => `!/${other.slice(1)}`),
  ];
  return (wanted ?? []).map((glob) => `import.meta.glob(${JSON.stringify(rooted(glob))}, { eager: true });`);
}

await build({
  configFile: false,
  root,
  logLevel: "warn",
  resolve: { alias: sourceAlias },
  plugins: [
    {
      name: "all-tests",
      enforce: "pre",
      resolveId: (id, importer) => {
        if (id === "tests") return entry;
        if (id === "vitest" && importer !== registry) return registry;
        if (id === "fast-check" && importer !== fewer) return fewer;
        return /^[a-z@]/.test(id) && !id.startsWith("@thirstline/") ? { id, external: true } : undefined;
      },
      load: (id) =>
        id === entry
          ? [
              'import "/tests/support/propertySeed.ts";',
              ...tests(),
              `export { tests } from ${JSON.stringify(registry)};`,
            ].join("\n")
          : undefined,
      // A test that reads a file looks for it from where the test stands, not from where the bundle does.
      transform: (code, id) =>
        id.startsWith("/") && code.includes("import.meta.url")
          ? code.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id.split("?")[0] ?? id).href))
          : undefined,
    },
  ],
  build: {
    ssr: true,
    target: "node20",
    minify: false,
    outDir: fileURLToPath(new URL(".", pathToFileURL(root + bundle))),
    emptyOutDir: true,
    rolldownOptions: {
      input: "tests",
      // The packages say that their modules have no effect of their own; a test has nothing but effects.
      treeshake: false,
      output: { entryFileNames: "tests.mjs", codeSplitting: false },
    },
  },
});
