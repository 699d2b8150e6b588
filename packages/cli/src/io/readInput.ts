import { readdir, readFile } from "node:fs/promises";
import { basename, dirname, resolve } from "node:path";
import { bounds, type Fault, nearest } from "@thirstline/spec";
import type { Io } from "./Io.js";

/** Why a file could not be read at all. */
export type UnreadCode = "no such file" | "folder" | "unreadable" | "binary" | "read twice";

/** What standard input is called. */
const STANDARD_INPUT = "standard input";

/** A file as read: its bytes under the name that faults call it by, or why there are none. */
export type Input = { readonly file: string; readonly bytes: Uint8Array } | { readonly fault: Fault };

/** Reads every file named, in order; "-" is standard input, once. */
export async function readInputs(files: readonly string[], io: Io): Promise<Input[]> {
  const inputs: Input[] = [];
  for (const [at, file] of files.entries()) {
    if (file !== "-") inputs.push(await fromFile(file, io.cwd));
    else if (files.indexOf("-") < at) inputs.push(unread(STANDARD_INPUT, "read twice", "can be read only once"));
    else inputs.push(await fromStream(io));
  }
  return inputs;
}

async function fromFile(file: string, cwd: string): Promise<Input> {
  const path = resolve(cwd, file);
  try {
    return text(file, await readFile(path));
  } catch (error) {
    return refused(file, path, error as NodeJS.ErrnoException);
  }
}

async function fromStream({ stdin }: Io): Promise<Input> {
  const pieces: Buffer[] = [];
  let size = 0;
  try {
    for await (const piece of stdin) {
      const bytes = Buffer.from(piece);
      pieces.push(bytes);
      size += bytes.length;
      if (size > bounds.bytes) break; // the reader refuses it for its size; the rest need not be waited for
    }
  } catch (error) {
    return unread(STANDARD_INPUT, "unreadable", `cannot be read: ${(error as Error).message}`);
  }
  return text(STANDARD_INPUT, Buffer.concat(pieces));
}

function text(file: string, bytes: Uint8Array): Input {
  // No text has a zero byte; a system file saved as UTF-16 has many.
  return bytes.includes(0)
    ? unread(file, "binary", "is not text; a system file is YAML or JSON in UTF-8")
    : { file, bytes };
}

async function refused(file: string, path: string, error: NodeJS.ErrnoException): Promise<Input> {
  if (error.code === "EISDIR") return unread(file, "folder", "is a folder; name the system files in it");
  if (error.code !== "ENOENT" && error.code !== "ENOTDIR") {
    return unread(file, "unreadable", `cannot be read: ${reason(error)}`);
  }
  const beside = await readdir(dirname(path)).catch(() => []);
  const near = nearest(basename(path), beside);
  return unread(file, "no such file", `there is no such file${near === undefined ? "" : `; did you mean ${near}?`}`);
}

/** The system's own words without the path, which is said already. */
function reason({ code, message }: NodeJS.ErrnoException): string {
  return code === "EACCES" || code === "EPERM" ? "permission denied" : message;
}

function unread(file: string, code: UnreadCode, message: string): Input {
  return { fault: { file, line: 1, column: 1, path: "", code, received: null, message } };
}
