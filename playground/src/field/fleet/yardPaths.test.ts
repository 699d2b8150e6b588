import { expect, test } from "vitest";
import { fileNamed, yardPaths } from "./yardPaths.js";

test("yardPaths(paths) counts from where the lists lie, and leaves out what is none of a yard's", () => {
  const paths = [
    "demo/heron.yaml",
    "demo/yard/log.csv",
    "demo/yard/machines.csv",
    "demo/elements.csv",
    "demo/readme.md",
  ];
  expect(yardPaths(paths)).toEqual(["../heron.yaml", "log.csv", "machines.csv", null, null]);
  expect(yardPaths(["yard/a.yaml", "yard/sub/b.json"])).toEqual(["a.yaml", "sub/b.json"]);
  expect(yardPaths(["log.csv", "heron.yaml", ".hidden.yaml"])).toEqual(["log.csv", "heron.yaml", null]);
});

test("fileNamed(name, paths) finds a file by its path, else the only one of its name", () => {
  expect(fileNamed("../heron.yaml", ["../heron.yaml", "heron.yaml"])).toBe("../heron.yaml");
  expect(fileNamed("./systems/../heron.yaml", ["heron.yaml"])).toBe("heron.yaml");
  expect(fileNamed("../heron.yaml", ["heron.yaml"])).toBe("heron.yaml");
  expect(fileNamed("../heron.yaml", ["a/heron.yaml", "b/heron.yaml"])).toBeNull();
});
