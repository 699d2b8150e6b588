import type { System, SystemPart } from "@thirstline/spec";
import { plain, quantity, verdictSentence } from "@thirstline/study";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerFor, demo } from "../support/pageAnswers.js";
import { accessibilityFaults, openSite, type Site } from "../support/preview.js";
import { pathNames, savedText, visitWhole } from "../support/sheetPage.js";
import { thirstline } from "./cli/thirstline.js";

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

const sentence = (page: Page) => page.locator(".sentence").textContent();
const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).click();
const heron = demo("heron.yaml");

function said(system: System): string {
  const { answer, point } = answerFor(system);
  return plain(verdictSentence(answer, point, "metric"));
}

/** What is looked at of `check --json`. */
interface Told {
  readonly answers: readonly { readonly points: readonly { readonly vacuum: { middle: { value: number } } }[] }[];
}

const start = ["port tank", "tank line", "elbows", "rise", "2 in parallel", "prefilter A", "prefilter B"];

test.concurrent("a part's figure is changed in any unit, answered as by `check`, undone and done again", async () => {
  const { page, complaints } = await visitWhole(site);
  await press(page, /^tank line/);
  const bore = page.getByLabel("Bore");
  await bore.fill("0.25 in");
  await bore.blur();
  const narrow = heron.suction.map(
    (part, at): SystemPart => (at === 0 && part.part === "line" ? { ...part, bore: 0.00635 } : part),
  );
  const due = said({ ...heron, suction: narrow });
  expect(due).toContain("starves");
  await page.waitForFunction(
    (text) =>
      document
        .querySelector("thirstline-page")
        ?.shadowRoot?.querySelector("bench-sheet")
        ?.shadowRoot?.querySelector(".sentence")?.textContent === text,
    due,
  );
  await press(page, "Undo");
  expect(await sentence(page)).toBe(said(heron));
  await page.keyboard.press("Control+Shift+z");
  expect(await sentence(page)).toBe(due);
  expect(complaints).toEqual([]);
});

test.concurrent("a path is rebuilt from the keyboard alone: add, move, branch, widen, duplicate, un-branch, remove", async () => {
  const { page, complaints } = await visitWhole(site);
  const by = async (name: string | RegExp) => {
    await page.getByRole("button", { name }).focus();
    await page.keyboard.press("Enter");
  };
  await by("Add a part behind port tank");
  await by("Strainer");
  expect((await pathNames(page)).slice(0, 3)).toEqual(["port tank", "strainer", "tank line"]);
  await by("Move towards the engine");
  expect((await pathNames(page)).slice(0, 3)).toEqual(["port tank", "tank line", "strainer"]);
  await by("Branch here");
  expect((await pathNames(page)).slice(2, 5)).toEqual(["2 in parallel", "strainer", "strainer 2"]);
  await by("Add a branch");
  expect((await pathNames(page)).slice(2, 6)).toEqual(["3 in parallel", "strainer", "strainer 2", "strainer 3"]);
  await by("Keep the first branch only");
  expect((await pathNames(page)).slice(2, 4)).toEqual(["strainer", "elbows"]);
  await by(/^strainer/);
  await by("Duplicate");
  expect((await pathNames(page)).slice(2, 5)).toEqual(["strainer", "strainer 2", "elbows"]);
  await by("Remove");
  await by(/^strainer/);
  await by("Remove");
  expect((await pathNames(page)).slice(0, 7)).toEqual(start);
  expect(await sentence(page)).toBe(said(heron));
  expect(complaints).toEqual([]);
});

test.concurrent.each([
  ["by mouse across a wide page", { viewport: { width: 1440, height: 900 } }, "click"],
  ["by finger down a narrow one", { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }, "tap"],
  ["from the keyboard", { viewport: { width: 1440, height: 900 } }, "press"],
] as const)(
  "a part is added inside a branch %s, and the vacuum is the command line's for the saved file",
  async (_, options, how) => {
    const { page, complaints } = await visitWhole(site, options);
    const act = async (name: string | RegExp) => {
      const button = page.getByRole("button", { name, exact: true });
      if (how === "press") await button.press("Enter");
      else await button[how]();
    };
    const vacuum = () => page.locator("fuel-path button.name", { hasText: "lift pump" }).locator("i").textContent();
    const before = await vacuum();
    await act("Add a part behind prefilter A");
    await page.locator("part-editor h2", { hasText: "Add a part here" }).waitFor();
    await act("Filter");
    await act("Add a part before prefilter B");
    await act("Elbow");
    expect((await pathNames(page)).slice(4, 9)).toEqual([
      "2 in parallel",
      "prefilter A",
      "filter",
      "elbow",
      "prefilter B",
    ]);
    expect(await vacuum()).not.toBe(before);
    const { stdout } = thirstline(["check", "-", "--json"], {
      folder: "demo",
      input: await savedText(page, "Save the file"),
    });
    const { answers } = JSON.parse(stdout) as Told;
    const vacuumTold = answers[0]?.points[0]?.vacuum.middle.value ?? Number.NaN;
    expect(await vacuum()).toBe(`${quantity(vacuumTold, "vacuum", "metric")} of vacuum`);
    expect(complaints).toEqual([]);
  },
);

test.concurrent("escape closes the editor and gives the keyboard back to the part", async () => {
  const { page } = await visitWhole(site);
  await press(page, /^fine filter/);
  await page.locator("part-editor h2", { hasText: "fine filter" }).waitFor();
  await page.keyboard.press("Escape");
  await page.locator("part-editor h2", { hasText: "fine filter" }).waitFor({ state: "detached" });
  const focused = await page.evaluate(
    () =>
      document
        .querySelector("thirstline-page")
        ?.shadowRoot?.querySelector("bench-sheet")
        ?.shadowRoot?.querySelector("fuel-path")?.shadowRoot?.activeElement?.textContent,
  );
  expect(focused).toContain("fine filter");
});

test.concurrent("what cannot be is refused in words, and the sheet keeps what it has", async () => {
  const { page } = await visitWhole(site);
  await press(page, /^prefilter A/);
  const name = page.getByLabel("Name");
  await name.fill("prefilter B");
  await name.blur();
  expect(await page.getByRole("alert").textContent()).toContain('another filter is called "prefilter B" already');
  expect(await name.inputValue()).toBe("prefilter A");
  await press(page, "Add a part behind it");
  await press(page, /^Rise$/);
  expect(await page.getByRole("alert").textContent()).toMatch(/^That cannot be: .*rise/);
  expect((await pathNames(page)).slice(0, 7)).toEqual(start);
});

test.concurrent("soil on the prefilters is shown as it is now, and starves the ferry when there is enough of it", async () => {
  const { page } = await visitWhole(site);
  for (const name of [/^prefilter A/, /^prefilter B/]) {
    await press(page, name);
    const soil = page.getByLabel("Soiled to, times its clean resistance");
    await soil.fill("20");
    await soil.blur();
  }
  const bank = heron.suction.map(
    (part): SystemPart =>
      part.part === "bank"
        ? {
            ...part,
            branches: part.branches.map((branch) => branch.map((one) => ({ ...one, restriction: 20 }) as SystemPart)),
          }
        : part,
  );
  expect(await sentence(page)).toBe(said({ ...heron, suction: bank }));
  expect(await sentence(page)).toContain("starves");
  expect((await page.locator("vacuum-chart .reads table").allInnerTexts()).join()).toContain("now");
});

test.concurrent("a pinned variant is compared figure by figure, gone back to and let go", async () => {
  const { page } = await visitWhole(site);
  await press(page, "Pin this");
  await page.getByRole("radio", { name: /Finer prefilter/ }).check({ force: true });
  const table = page.locator("pinned-variants table");
  const row = async (name: string) =>
    ((await table.locator("tr", { hasText: name }).allInnerTexts())[0] ?? "").split("\t");
  expect(await row("Verdict")).toEqual(["Verdict", "Holds", "Tight"]);
  expect((await page.locator("vacuum-chart .reads table").allInnerTexts()).join()).toContain("A");
  await press(page, "Go back to A");
  expect(await sentence(page)).toBe(said(heron));
  await press(page, "Let go of A");
  await table.waitFor({ state: "detached" });
});

test.concurrent.each([
  [
    "by touch on a narrow screen",
    { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, colorScheme: "dark" },
  ],
  ["on a wide one", { viewport: { width: 1440, height: 900 } }],
] as const)("the editor works %s, and axe-core finds no fault with it", async (_, options) => {
  const { page } = await visitWhole(site, options);
  const act = async (name: string | RegExp) => {
    const button = page.getByRole("button", { name });
    await ("hasTouch" in options ? button.tap() : button.click());
  };
  await act(/^elbows/);
  expect(await accessibilityFaults(page)).toEqual([]);
  await act("Branch here");
  await act("Pin this");
  await act("Add a part behind port tank");
  expect(await accessibilityFaults(page)).toEqual([]);
  await act(/^Filter$/);
  expect(await pathNames(page)).toContain("filter");
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(options.viewport.width);
});
