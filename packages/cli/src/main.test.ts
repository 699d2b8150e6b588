import { PassThrough, Readable, Writable } from "node:stream";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import type { Io } from "./io/Io.js";
import { main } from "./main.js";

const demo = fileURLToPath(new URL("../../spec/demo", import.meta.url));

/** Runs a command line on streams of its own, and gives what it wrote. */
async function run(args: string[], change: Partial<Io> = {}) {
  const stdout = new PassThrough();
  const stderr = new PassThrough();
  const io = { stdin: Readable.from([]), stdout, stderr, cwd: demo, columns: 80, isTerminal: false, environment: {} };
  const code = await main(args, { ...io, ...change });
  const text = (stream: PassThrough) => (stream.read() as Buffer | null)?.toString() ?? "";
  return { code, stdout: text(stdout), stderr: text(stderr) };
}

const widest = (text: string) => Math.max(...text.split("\n").map((line) => [...line].length));

test("main(args, io) draws a curve as wide as the terminal, from 60 to 120", async () => {
  const chart = async (columns: number | undefined) => {
    const { stdout } = await run(["curve", "heron.yaml"], { columns });
    return widest(
      stdout
        .split("\n")
        .filter((line) => line.includes("▶") || line.includes("┄┄┄"))
        .join("\n"),
    );
  };
  expect(await chart(undefined)).toBe(await chart(80));
  expect(await chart(100)).toBe((await chart(80)) + 20);
  expect(await chart(20)).toBe((await chart(80)) - 20);
  expect(await chart(500)).toBe((await chart(80)) + 40);
});

test("main(args, io) says when it cannot write, and exits 2", async () => {
  const stdout = new Writable({ write: (_piece, _encoding, done) => done(new Error("no space left")) });
  expect(await run(["--help"], { stdout })).toEqual({
    code: 2,
    stdout: "",
    stderr: "thirstline: cannot write: no space left\n",
  });
});

test("main(args, io) takes a reader that has gone for one that has had enough", async () => {
  const gone = Object.assign(new Error("write EPIPE"), { code: "EPIPE" });
  const stdout = new Writable({ write: (_piece, _encoding, done) => done(gone) });
  expect(await run(["check", "heron.yaml"], { stdout })).toEqual({ code: 0, stdout: "", stderr: "" });
});

test("main(args, io) finds files from its folder", async () => {
  const { code, stderr } = await run(["check", "heron.yaml"], { cwd: "/" });
  expect(stderr).toBe("heron.yaml: there is no such file\n");
  expect(code).toBe(2);
});

test("main(args, io) says when standard input cannot be read", async () => {
  const stdin = new Readable({
    read() {
      this.destroy(new Error("the cable is out"));
    },
  });
  const { code, stderr } = await run(["check", "-"], { stdin });
  expect(stderr).toBe("standard input: cannot be read: the cable is out\n");
  expect(code).toBe(2);
});
