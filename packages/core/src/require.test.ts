import { expect, test } from "vitest";
import { requireAtLeast, requireBetween, requireFinite, requireMoreThan } from "./require.js";

const notNumbers = [Number.NaN, undefined, null, "3", {}] as unknown as number[];

test("requireMoreThan refuses the bound itself and infinity, and lets a value above through", () => {
  expect(() => requireMoreThan("line", "bore", 0, 0, "m")).toThrow("line requires bore to be more than 0 m, got 0");
  expect(() => requireMoreThan("line", "bore", Infinity, 0, "m")).toThrow("got Infinity");
  expect(() => requireMoreThan("line", "bore", 1e-9, 0, "m")).not.toThrow();
});

test("requireAtLeast lets the bound itself through", () => {
  expect(() => requireAtLeast("fitting", "k", -1, 0)).toThrow("fitting requires k to be at least 0, got -1");
  expect(() => requireAtLeast("fitting", "k", 0, 0)).not.toThrow();
});

test("requireBetween lets both bounds through and refuses what lies outside", () => {
  const bounds = { from: 0, to: 1 };
  expect(() => requireBetween("blend", "share", 1.1, bounds)).toThrow(
    "blend requires share to be between 0 and 1, got 1.1",
  );
  expect(() => requireBetween("blend", "share", -0.1, bounds)).toThrow("got -0.1");
  expect(() => requireBetween("blend", "share", 0, bounds)).not.toThrow();
  expect(() => requireBetween("blend", "share", 1, bounds)).not.toThrow();
});

test("requireFinite refuses both infinities", () => {
  expect(() => requireFinite("rise", "height", -Infinity, "m")).toThrow(
    "rise requires height to be a finite number of m, got -Infinity",
  );
  expect(() => requireFinite("rise", "height", -3, "m")).not.toThrow();
});

test.each(notNumbers.map((value) => [value]))("every guard refuses %o", (value) => {
  expect(() => requireMoreThan("a", "b", value, -1e9)).toThrow("a requires b to be");
  expect(() => requireAtLeast("a", "b", value, -1e9)).toThrow("a requires b to be");
  expect(() => requireBetween("a", "b", value, { from: -1e9, to: 1e9 })).toThrow("a requires b to be");
  expect(() => requireFinite("a", "b", value)).toThrow("a requires b to be");
});
