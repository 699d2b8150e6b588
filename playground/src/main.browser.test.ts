import { expect, test } from "vitest";
import { page } from "vitest/browser";

test("the page opens with its question under its name", async () => {
  await import("./main.js");
  await expect.element(page.getByRole("heading", { level: 1 })).toHaveTextContent("Thirstline");
  await expect.element(page.getByRole("main")).toHaveTextContent("Will the pump get the fuel");
});
