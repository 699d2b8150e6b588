import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The command line as it is installed; built before the tests run. */
export const BIN = here("../../../packages/cli/bin/thirstline.js");
/** Systems that are shipped, and systems of these tests. */
export const FOLDERS = { demo: here("../../../packages/spec/demo"), files: here("./files") } as const;

/** Where and with what a command line is run. */
export interface Setting {
  readonly folder: keyof typeof FOLDERS;
  readonly input?: string;
  readonly environment?: Readonly<Record<string, string>>;
}

/** What a command line did. */
export interface Outcome {
  readonly stdout: string;
  readonly stderr: string;
  readonly code: number | null;
}

/** Runs the command line as a process, with nothing of the tests' own environment but the path. */
export function thirstline(args: readonly string[], { folder, input = "", environment = {} }: Setting): Outcome {
  const { stdout, stderr, status } = spawnSync(process.execPath, [BIN, ...args], {
    cwd: FOLDERS[folder],
    env: { PATH: process.env.PATH, ...environment },
    input,
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  return { stdout, stderr, code: status };
}
