import { expect, test } from "vitest";
import { InputError } from "./InputError.js";

test("new InputError(caller, path, expected, received) says it in one fragment and keeps the parts", () => {
  const error = new InputError("line", "bore", "more than 0 m", Number.NaN);
  expect(error.message).toBe("line requires bore to be more than 0 m, got NaN");
  expect(error).toMatchObject({ name: "InputError", caller: "line", path: "bore", expected: "more than 0 m" });
  expect(error.received).toBeNaN();
  expect(error).toBeInstanceOf(Error);
});

test.each([
  ["text", '"text"'],
  [undefined, "undefined"],
  [null, "null"],
  [Infinity, "Infinity"],
  [[1, 2], "a list of 2"],
  [{}, "an object"],
  [() => 1, "a function"],
])("new InputError shows %o as %s", (received, shown) => {
  expect(new InputError("line", "bore", "a number", received).message).toBe(
    `line requires bore to be a number, got ${shown}`,
  );
});
