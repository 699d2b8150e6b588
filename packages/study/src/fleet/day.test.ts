import { expect, test } from "vitest";
import { dateOf, dayOf } from "./day.js";

test("dayOf(date) counts whole days, over leap years and whatever the clocks do", () => {
  expect(dayOf("1970-01-01")).toBe(0);
  expect(dayOf("2024-03-01") - dayOf("2024-02-28")).toBe(2);
  expect(dayOf("2026-03-01") - dayOf("2026-02-28")).toBe(1);
  expect(dayOf("2100-03-01") - dayOf("2100-02-28")).toBe(1);
  expect(dayOf("2026-03-30") - dayOf("2026-03-28")).toBe(2); // clocks are put forward in between in many places
});

test("dateOf(dayOf(date)) is the date, for every day a file may name", () => {
  for (let day = dayOf("1950-01-01"); day <= dayOf("2149-12-31"); day++) {
    if (dayOf(dateOf(day)) !== day) expect(dateOf(day)).toBe(`day ${day}`);
  }
  expect(dateOf(dayOf("2149-12-31"))).toBe("2149-12-31");
});
