import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openSite, type Site } from "../support/preview.js";
import { pathNames, until, visitWhole } from "../support/sheetPage.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

/** The middle of a name on the path, px in the window. */
async function middleOf(page: Page, name: string): Promise<{ x: number; y: number }> {
  const box = await page.locator("fuel-path button.name", { hasText: name }).first().boundingBox();
  if (box === null) throw new Error(`no ${name}`);
  return { x: box.x + box.width / 2, y: box.y + 12 };
}

/** The symbol of a part, px in the window. */
async function symbolOf(page: Page, key: string): Promise<{ x: number; y: number }> {
  const box = await page.locator(`fuel-path g[data-key="${key}"] .grip`).first().boundingBox();
  if (box === null) throw new Error(`no ${key}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const start = ["port tank", "tank line", "elbows", "rise", "2 in parallel", "prefilter A", "prefilter B", "pump line"];
const names = async (page: Page) => (await pathNames(page)).slice(0, 8);

test.concurrent("a part is dragged along the path by the mouse, in one step of undo, and chosen by a press as before", async () => {
  const { page, complaints } = await visitWhole(site, { viewport: { width: 1440, height: 1100 } });
  const from = await middleOf(page, "tank line");
  const to = await symbolOf(page, "part/suction//2//");
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 30, to.y, { steps: 4 });
  await page.mouse.move(to.x + 45, to.y, { steps: 8 });
  expect(await page.locator("fuel-path .spot.over").count()).toBe(1);
  expect(await page.locator("fuel-path .ghost").textContent()).toBe("tank linebehind rise");
  await page.mouse.up();
  expect(await names(page)).toEqual(["port tank", "elbows", "rise", "tank line", ...start.slice(4)]);
  expect(await page.locator("part-editor").count()).toBe(0);
  await page.getByRole("button", { name: "Undo" }).click();
  expect(await names(page)).toEqual(start);
  expect(await page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
  await page.mouse.click(to.x, to.y);
  await page.locator("part-editor h2", { hasText: "rise" }).waitFor();
  expect(complaints).toEqual([]);
});

test.concurrent("escape, or letting go far away, leaves the path as it was", async () => {
  const { page } = await visitWhole(site, { viewport: { width: 1440, height: 1100 } });
  const from = await symbolOf(page, "part/suction//0//");
  const to = await symbolOf(page, "part/suction//4//");
  for (const end of ["escape", "away"]) {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 6 });
    if (end === "escape") await page.keyboard.press("Escape");
    else await page.mouse.move(to.x, to.y + 320, { steps: 3 });
    expect(await page.locator("fuel-path .spot.over").count()).toBe(0);
    await page.mouse.up();
    expect(await names(page)).toEqual(start);
  }
});

test.concurrent("a filter is dragged out of its bank, which leaves its one branch, and a bank goes into no other", async () => {
  const { page } = await visitWhole(site, { viewport: { width: 1440, height: 1100 } });
  const from = await symbolOf(page, "part/suction//3/1/0");
  const to = await symbolOf(page, "part/suction//4//");
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x + 50, to.y, { steps: 8 });
  await page.mouse.up();
  expect((await pathNames(page)).slice(3, 7)).toEqual(["rise", "prefilter A", "pump line", "prefilter B"]);
});

test.concurrent("a finger that lies still drags a part, one that moves at once scrolls", async () => {
  const { page } = await visitWhole(site, { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  await page.locator("fuel-path").evaluate((path) => scrollTo(0, path.getBoundingClientRect().top + scrollY - 200));
  const cdp = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", points: { x: number; y: number }[]) =>
    cdp.send("Input.dispatchTouchEvent", { type, touchPoints: points });
  const from = await symbolOf(page, "part/suction//0//");
  const to = await symbolOf(page, "part/suction//2//");
  await touch("touchStart", [from]);
  await page.locator("fuel-path .ghost").waitFor();
  const before = await page.evaluate(() => scrollY);
  for (let step = 1; step <= 6; step++) {
    await touch("touchMove", [{ x: from.x, y: from.y + ((to.y + 40 - from.y) * step) / 6 }]);
  }
  await page.locator("fuel-path .spot.over").waitFor();
  expect(await page.evaluate(() => scrollY)).toBe(before);
  await touch("touchEnd", []);
  await until(async () => (await pathNames(page))[3] === "tank line");
  const again = await symbolOf(page, "part/suction//0//");
  await touch("touchStart", [again]);
  for (let step = 1; step <= 6; step++) await touch("touchMove", [{ x: again.x, y: again.y - step * 25 }]);
  await touch("touchEnd", []);
  expect(await page.locator("fuel-path .ghost").count()).toBe(0);
  expect((await pathNames(page))[1]).toBe("elbows");
});

test.concurrent("a tank's own path is added to, moved in and taken from, by mouse and by keyboard", async () => {
  const { page, complaints } = await visitWhole(site, { viewport: { width: 1440, height: 1100 } });
  await page.getByLabel("Open an example").selectOption("lorry.yaml");
  const tanks = async () => (await pathNames(page)).slice(0, 7);
  const lorry = await tanks();
  await page.getByRole("button", { name: "Add a part behind left tank" }).click();
  await page.getByRole("button", { name: "Strainer", exact: true }).click();
  expect(lorry.slice(0, 4)).toEqual(["left tank", "left hose", "right tank", "cross-over hose"]);
  expect(await tanks()).toEqual(["left tank", "strainer", ...lorry.slice(1, 6)]);
  await page.getByRole("button", { name: "Move towards the engine" }).press("Enter");
  expect((await tanks()).slice(0, 3)).toEqual(["left tank", "left hose", "strainer"]);
  await page.getByLabel("Move it to").selectOption({ label: "from right tank" });
  await until(async () => (await tanks()).indexOf("strainer") > (await tanks()).indexOf("right tank"));
  await page.getByRole("button", { name: "Remove", exact: true }).press("Enter");
  expect(await tanks()).toEqual(lorry);
  expect(complaints).toEqual([]);
});
