import { posix } from "node:path";
import ts from "typescript";

/** Texts of sources and of their packages' manifests by path; every path starts at the repository's root. */
export type Sources = ReadonlyMap<string, string>;

/** What may be imported from outside: each row whose path an importing file's path starts with allows its packages. */
const ALLOWED: [string, string[]][] = [
  ["packages/spec/src/", ["@thirstline/core", "yaml", "zod"]],
  ["packages/spec/src/units", ["mathjs"]],
  ["packages/study/src/", ["@thirstline/core", "@thirstline/spec"]],
  ["packages/study/src/working/", ["mathjs"]],
  ["packages/study/src/gauge/", ["ml-levenberg-marquardt", "ml-matrix", "jstat"]],
  ["packages/study/src/fleet/", ["ics"]],
  ["packages/cli/src/", ["@thirstline/spec", "@thirstline/study", "node:"]],
  ["packages/cli/src/log/", ["proper-lockfile"]],
  ["packages/cli/src/text/plotTraces.ts", ["simple-ascii-chart"]],
  [
    "playground/src/",
    [
      "@thirstline/spec",
      "@thirstline/study",
      "lit",
      "uplot",
      "temml",
      "idb",
      "@fontsource/stix-two-math",
      "virtual:catalogue",
      "virtual:examples",
      "virtual:field",
      "virtual:opening",
      "@fontsource-variable/atkinson-hyperlegible-next",
      "@fontsource/atkinson-hyperlegible-mono",
    ],
  ],
];

/** Folders of core from the lowest up. Those in one row stand side by side; files in none of them lie below them all. */
const CORE_LAYERS = [["fuel"], ["parts"], ["circuit"], ["supply"], ["soil"]];

interface Import {
  from: string;
  /** As written. */
  name: string;
  /** The file meant by a relative import. */
  file?: string;
}

/**
 * Every breach of the house's import rules, one line each, in order of file: a package where it may not be used, a
 * relative path out of the own package, a lower folder of core using a higher one, and every import cycle.
 */
export function importFaults(sources: Sources): string[] {
  const files = [...sources].filter(([path]) => path.endsWith(".ts")).sort();
  const imports = files.flatMap(([from, text]) => importsOf(from, text, sources));
  return [...imports.flatMap(placeFault), ...cycles(imports, sources)];
}

function importsOf(from: string, text: string, sources: Sources): Import[] {
  const names = ts.preProcessFile(text, true, true).importedFiles.map(({ fileName }) => fileName);
  return names.flatMap((name): Import[] => {
    if (name.startsWith("#")) return meanings(name, homeOf(from), sources).map((meant) => meantBy(from, meant));
    if (!name.startsWith(".")) return [{ from, name }];
    return [{ from, name, file: posix.join(posix.dirname(from), name).replace(/\.js$/, ".ts") }];
  });
}

/** A manifest's meaning of a name: a package, or a file beside the manifest. */
function meantBy(from: string, meant: string): Import {
  return meant.startsWith("./") ? { from, name: meant, file: posix.join(homeOf(from), meant) } : { from, name: meant };
}

/** Every package that a name starting with "#" may stand for by its package's manifest; the name itself if none. */
function meanings(name: string, home: string, sources: Sources): string[] {
  const manifest: { imports?: Record<string, unknown> } = JSON.parse(sources.get(`${home}package.json`) ?? "{}");
  const leaves = (value: unknown): string[] =>
    typeof value === "object" && value !== null ? Object.values(value).flatMap(leaves) : [String(value)];
  return leaves(manifest.imports?.[name] ?? name);
}

function placeFault({ from, name, file }: Import): string[] {
  const refuse = (why: string) => [`${from} imports ${name}: ${why}`];
  if (file === undefined) {
    const allowed = ALLOWED.flatMap(([start, packages]) => (from.startsWith(start) ? packages : []));
    return allowed.includes(packageOf(name))
      ? []
      : refuse(`outside its folder it may use ${allowed.join(", ") || "nothing"}`);
  }
  if (homeOf(file) !== homeOf(from)) return refuse("import another package by its name");
  if (!from.startsWith("packages/core/src/") || from === "packages/core/src/index.ts") return [];
  const [mine, theirs] = [folderOf(from), folderOf(file)];
  return mine === theirs || rankOf(theirs) < rankOf(mine) ? [] : refuse(`${theirs} does not lie below ${mine}`);
}

/** "@scope/name/entry" is "@scope/name", "lit/decorators.js" is "lit", "node:fs" is "node:". */
const packageOf = (name: string): string => /^(node:|@[^/]+\/[^/?]+|[^/?]+)/.exec(name)?.[0] ?? name;

const homeOf = (file: string): string => /^(packages\/[^/]+|[^/]+)\//.exec(file)?.[0] ?? "";

/** The layer a file of core belongs to, or "ground" for what lies below them all. */
function folderOf(file: string): string {
  const folder = file.split("/")[3] ?? "";
  return CORE_LAYERS.flat().includes(folder) ? folder : "ground";
}

const rankOf = (folder: string): number => CORE_LAYERS.findIndex((row) => row.includes(folder));

/** Walks down from every file; meeting a file that is still being walked closes a cycle. */
function cycles(imports: Import[], sources: Sources): string[] {
  const targets = new Map([...sources.keys()].sort().map((file) => [file, [] as string[]]));
  for (const { from, file } of imports) if (file !== undefined) targets.get(from)?.push(file);
  const found: string[] = [];
  const done = new Set<string>();
  const walk = (file: string, trail: string[]): void => {
    const start = trail.indexOf(file);
    if (start >= 0) found.push(`import cycle: ${[...trail.slice(start), file].join(" -> ")}`);
    if (start >= 0 || done.has(file)) return;
    for (const target of targets.get(file) ?? []) walk(target, [...trail, file]);
    done.add(file);
  };
  for (const file of targets.keys()) walk(file, []);
  return found;
}
