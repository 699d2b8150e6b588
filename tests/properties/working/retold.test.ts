import type { CatalogueElement } from "@thirstline/spec/system";
import { choiceFigures, choiceWorking, isChoiceFigure, swapChoice } from "@thirstline/study/working";
import { expect, test } from "vitest";
import { stepsIn } from "../../support/steps.js";
import { demoElements, demoSystem } from "../choose/arrangements.js";

const heron = demoSystem("heron");
const larger = demoElements("elements/p10-larger-body.yaml")[0] as CatalogueElement;

test("choiceWorking(swap, leaf) tells what is the element's from what the file states", () => {
  const choice = swapChoice(heron, { at: "fine filter", with: larger });
  const working = choiceWorking(choice, { of: "changed", figure: "feed pressure", asked: {} });
  const origins = stepsIn(working?.step).map(({ origin }) => origin);
  const own = origins.flatMap((origin) => (origin.by === "source" ? [origin.source] : []));
  expect(own.some((source) => source.startsWith(`the element catalogue's "${larger.name}": flow test`))).toBe(true);
  const places = origins.flatMap((origin) => (origin.by === "file" ? [origin.path] : []));
  expect(places.some((path) => path.startsWith("delivery[") && path.endsWith("flow test[0].drop"))).toBe(false);
});

test("choiceWorking(choice, leaf) is null for what is no figure, or belongs to nothing compared", () => {
  const choice = swapChoice(heron, { at: "fine filter", with: larger });
  expect(choiceWorking(choice, { of: "changed", figure: "colour", asked: {} })).toBeNull();
  expect(choiceWorking(choice, { of: "elsewhere", figure: "vacuum", asked: {} })).toBeNull();
});

test("choiceFigures(choice, of) lists the question's own figures before those of check and life", () => {
  const choice = swapChoice(heron, { at: "fine filter", with: larger });
  const names = choiceFigures(choice, "changed").map(({ name }) => name);
  expect(names.slice(0, 2)).toEqual(["service interval", "starves below"]);
  expect(names).toContain("vacuum now");
  expect(choiceFigures(choice, "elsewhere")).toEqual([]);
  expect(isChoiceFigure(choice, { of: "changed", figure: "starves below", asked: {} })).toBe(true);
  expect(isChoiceFigure(choice, { of: "changed", figure: "colour", asked: {} })).toBe(false);
});
