import type { YardFile } from "./YardFile.js";
import { yardPaths } from "./yardPaths.js";

/** More than a yard's files together may be, bytes. */
const TOO_LARGE = 100 * 1024 * 1024;

/** A file with where it lay. */
export interface Found {
  readonly path: string;
  readonly file: File;
}

/** What was opened: a yard's files and what their folder is called, or why not. */
export type Opened = { readonly name: string; readonly files: readonly YardFile[] } | { readonly refused: string };

/** The files of a chooser, by the paths they have in the folder that was chosen. */
export function chosen(list: FileList): Found[] {
  return [...list].map((file) => ({ path: file.webkitRelativePath || file.name, file }));
}

/** Every file that was let go, folders with all that is in them. */
export async function dropped(items: DataTransferItemList): Promise<Found[]> {
  // All asked for at once: the list is empty after the first wait.
  const entries = [...items].flatMap((item) => item.webkitGetAsEntry() ?? []);
  return (await Promise.all(entries.map(inEntry))).flat();
}

async function inEntry(entry: FileSystemEntry): Promise<Found[]> {
  if (entry.isFile) {
    const file = await new Promise<File>((resolve, reject) => (entry as FileSystemFileEntry).file(resolve, reject));
    return [{ path: entry.fullPath.replace(/^\//, ""), file }];
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const found: Found[] = [];
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject));
    if (some.length === 0) return found;
    found.push(...(await Promise.all(some.map(inEntry))).flat());
  }
}

/** Reads what belongs to a yard. */
export async function opened(found: readonly Found[]): Promise<Opened> {
  const paths = yardPaths(found.map(({ path }) => path));
  const own = found.flatMap(({ file }, at) => {
    const path = paths[at];
    return path === null || path === undefined ? [] : [{ path, file }];
  });
  if (own.length === 0)
    return { refused: "There is no system file among them, and no list of machines, so nothing was opened." };
  if (own.reduce((sum, { file }) => sum + file.size, 0) > TOO_LARGE) {
    return { refused: "Together these files are larger than 100 MB, more than any yard's, so they were not opened." };
  }
  const files = await Promise.all(
    own.map(async ({ path, file }) => ({ path, bytes: new Uint8Array(await file.arrayBuffer()) })),
  );
  const [first = ""] = found.map(({ path }) => path);
  return { name: first.includes("/") ? first.slice(0, first.indexOf("/")) : `${own.length} files`, files };
}
