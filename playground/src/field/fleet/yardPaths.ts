import { LOG, MACHINES } from "./YardFile.js";

/** The files of a folder as paths from where its lists lie; see `YardFile`. Files that are none of a yard's are left out. */
export function yardPaths(paths: readonly string[]): (string | null)[] {
  const base = folderOf(listAmong(paths) ?? paths.find(isSystem) ?? "");
  return paths.map((path) => {
    const from = relative(base, path);
    if (isSystem(path)) return from;
    return /\.csv$/i.test(path) && !from.includes("/") ? from : null;
  });
}

/** The file a list names, among those that are there: by its path, else the only one of that name. */
export function fileNamed(name: string, paths: readonly string[]): string | null {
  const wanted = tidy(name);
  const exact = paths.find((path) => path === wanted);
  if (exact !== undefined) return exact;
  const alike = paths.filter((path) => lastOf(path) === lastOf(wanted));
  return alike.length === 1 ? (alike[0] ?? null) : null;
}

function isSystem(path: string): boolean {
  return /\.(ya?ml|json)$/i.test(path) && !/(^|\/)(\.|node_modules\/)/.test(path);
}

/** The list of machines that lies highest, else such a log. */
function listAmong(paths: readonly string[]): string | undefined {
  const highest = (name: string) =>
    paths.filter((path) => lastOf(path) === name).sort((a, b) => a.split("/").length - b.split("/").length)[0];
  return highest(MACHINES) ?? highest(LOG);
}

function lastOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1);
}

function folderOf(path: string): string[] {
  return path.split("/").slice(0, -1);
}

function relative(base: readonly string[], path: string): string {
  const parts = path.split("/");
  let same = 0;
  while (same < base.length && parts[same] === base[same]) same++;
  return [...base.slice(same).map(() => ".."), ...parts.slice(same)].join("/");
}

/** Without "." and with ".." worked out where something stands before it. */
function tidy(name: string): string {
  const parts: string[] = [];
  for (const part of name.split("/")) {
    if (part === "..") {
      if (parts.length > 0 && parts.at(-1) !== "..") parts.pop();
      else parts.push(part);
    } else if (part !== "." && part !== "") parts.push(part);
  }
  return parts.join("/");
}
