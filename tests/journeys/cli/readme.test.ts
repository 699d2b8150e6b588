import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { FOLDERS, thirstline } from "./thirstline.js";

const readme = readFileSync(new URL("../../../README.md", import.meta.url), "utf8");
const blocks = [...readme.matchAll(/```console\n\$ thirstline (.*)\n([\s\S]*?)```/g)].map(([, command, shown]) => ({
  command: command ?? "",
  shown: shown ?? "",
}));

test("README shows commands with their output", () => {
  expect(blocks.length).toBeGreaterThanOrEqual(4);
});

test.each(blocks)("README shows what `thirstline $command` writes", ({ command, shown }) => {
  const args = [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? "");
  const file = args.find((arg) => arg.endsWith(".yaml")) ?? "";
  const folder = existsSync(join(FOLDERS.demo, file)) ? "demo" : "files";
  const { stdout, stderr } = thirstline(args, { folder });
  const written = stdout + stderr;
  // A line of "…" stands for lines left out; what is shown must be there, line for line and in order.
  const parts = shown.split(/^…\n/m).filter((part) => part !== "");
  expect(parts.length).toBeGreaterThan(0);
  let from = 0;
  for (const part of parts) {
    const at = written.indexOf(part, from);
    expect(at, part).toBeGreaterThanOrEqual(from);
    from = at + part.length;
  }
  if (!shown.startsWith("…")) expect(written.startsWith(parts[0] ?? "")).toBe(true);
});
