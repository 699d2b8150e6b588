import { afterAll, beforeAll, expect, test } from "vitest";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

test("the built page opens under its title without a complaint", async () => {
  const { page, complaints } = await site.visit();
  await page.waitForLoadState("networkidle"); // what is fetched late may complain late
  expect(await page.title()).toBe("Thirstline");
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("Thirstline");
  expect(complaints).toEqual([]);
});

test("the built page has no fault axe-core can find", async () => {
  const { page } = await site.visit();
  expect(await accessibilityFaults(page)).toEqual([]);
});

test("a page that logs an error and hides its language is caught doing so", async () => {
  const { page, complaints } = await site.visit();
  await page.evaluate(() => {
    document.documentElement.removeAttribute("lang");
    console.error("the tank is dry");
  });
  expect(complaints).toEqual(["console: the tank is dry"]);
  expect(await accessibilityFaults(page)).toEqual(["<html> element must have a lang attribute: html"]);
});

test("the browser speaks a language Intl knows", async () => {
  const { page } = await site.visit();
  expect(await page.evaluate(() => new Intl.NumberFormat(navigator.language).resolvedOptions().locale)).toBe("en-US");
});
