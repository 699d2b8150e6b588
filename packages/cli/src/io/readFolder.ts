import { readdir } from "node:fs/promises";
import { resolve } from "node:path";
import type { Fault } from "@thirstline/spec";
import type { Io } from "./Io.js";

/** Names of the files in a folder, in order, or why there are none. */
export async function readFolder(
  folder: string,
  { cwd }: Io,
): Promise<{ readonly names: readonly string[] } | { readonly fault: Fault }> {
  const fault = (code: string, message: string) => ({
    fault: { file: folder, line: 1, column: 1, path: "", code, received: null, message },
  });
  try {
    const found = await readdir(resolve(cwd, folder), { withFileTypes: true });
    const names = found.filter((one) => !one.isDirectory()).map(({ name }) => name);
    return { names: names.sort() };
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === "ENOENT") return fault("no such file", "there is no such folder");
    if (code === "ENOTDIR") return fault("no such file", "is a file; name the folder it lies in");
    return fault("unreadable", `cannot be read: ${code === "EACCES" ? "permission denied" : message}`);
  }
}
