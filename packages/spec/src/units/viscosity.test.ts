import { expect, test } from "vitest";
import { viscosity } from "./viscosity.js";

test('viscosity("3 mm2/s") is kinematic, m2/s', () => {
  expect(viscosity("3 mm2/s")).toEqual({ kinematic: 3e-6 });
});

test('viscosity("2.5 mPa s") is dynamic, Pa s', () => {
  expect(viscosity("2.5 mPa s")).toEqual({ dynamic: 2.5e-3 });
});

test.each([
  ["3 mm", '"3 mm" is a length; a viscosity is wanted, such as "3 mm2/s" or "2.5 mPa s"'],
  ["3", '"3" has no unit; write it as "3 mm2/s"'],
  ["3 m2/s", '"3 m2/s" is too large for a viscosity; 0.25 mm2/s to 2000 mm2/s makes sense, such as "3 mm2/s"'],
  ["3 kPa s", '"3 kPa s" is too large for a viscosity; 0.1 mPa s to 2000 mPa s makes sense, such as "2.5 mPa s"'],
])("viscosity(%j) says what is wrong and what would be right", (text, message) => {
  expect(viscosity(text)).toMatchObject({ fault: { message } });
});
