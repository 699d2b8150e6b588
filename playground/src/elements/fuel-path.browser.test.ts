import type { System } from "@thirstline/spec/system";
import { check } from "@thirstline/study";
import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import "./fuel-path.js";

const system: System = {
  format: "thirstline/1",
  name: "a pump with two filters",
  fuel: { kind: "diesel", grade: "winter", measured: { cloudPoint: 250 } },
  temperature: 288.15,
  altitude: 0,
  demand: { burn: 3e-5, return: 0 },
  tanks: [{ name: "tank", fullDepth: 1, lowDepth: 0.2, vent: { kind: "open" }, path: [] }],
  suction: [
    { part: "line", name: "hose", length: 4, bore: 0.01, roughness: 1e-5 },
    { part: "bank", name: "bank", branches: ["left", "right"].map((name) => [filter(name)]) },
  ],
  pump: { kind: "fixed", flow: 1e-4, relief: 8e4, reliefTo: "inlet" },
  delivery: [filter("fine")],
  limits: { vacuumClean: 2e4, vacuumAtChange: 4e4, feedPressure: 2e4 },
};

function filter(name: string) {
  const medium = { by: "flow test", points: [{ drop: 2000, flow: 5e-5 }], dynamicViscosity: 0.0025 } as const;
  return { part: "filter", name, medium, blocked: false, reversed: false } as const;
}

async function shown(width: number) {
  const [point] = check(system).points;
  if (point === undefined) throw new Error("no point");
  const holder = document.createElement("div");
  holder.style.width = `${width}px`;
  const path = document.createElement("fuel-path");
  Object.assign(path, { system, point });
  holder.append(path);
  document.body.append(holder);
  await expect.element(page.getByRole("button", { name: "hose" }).last()).toBeInTheDocument();
  return { path, point };
}

afterEach(() => document.body.replaceChildren());

const namesOf = (path: Element) =>
  [...(path.shadowRoot?.querySelectorAll(".name > span") ?? [])].map((one) => one.textContent?.trim());

test("<fuel-path> names everything from tank to injection pump, branches under their bank", async () => {
  const { path } = await shown(1000);
  expect(namesOf(path)).toEqual([
    "tank",
    "hose",
    "2 in parallel",
    "left",
    "right",
    "lift pump",
    "fine",
    "injection pump",
  ]);
});

test("<fuel-path> says which part was pressed, by its place", async () => {
  const { path } = await shown(1000);
  const chosen = new Promise((resolve) => path.addEventListener("sheet-choose", (event) => resolve(event.chosen)));
  await page.getByRole("button", { name: "right" }).last().click();
  expect(await chosen).toEqual({ kind: "part", place: { side: "suction", at: 1, branch: 1, inner: 0 } });
});

test("<fuel-path> runs across where there is room, and down the page where there is none", async () => {
  const wide = await shown(1000);
  expect(wide.path.shadowRoot?.querySelector(".names.upright")).toBeNull();
  document.body.replaceChildren();
  const narrow = await shown(360);
  expect(narrow.path.shadowRoot?.querySelector(".names.upright")).not.toBeNull();
});

test("<fuel-path> draws each branch of a bank as a step of its own", async () => {
  const { path } = await shown(1000);
  expect(path.shadowRoot?.querySelectorAll(".branch")).toHaveLength(2);
});
