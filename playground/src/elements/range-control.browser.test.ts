import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import "./range-control.js";

async function shown(fields: Partial<HTMLElementTagNameMap["range-control"]>) {
  const control = document.createElement("range-control");
  Object.assign(control, fields);
  document.body.append(control);
  await expect.element(page.getByRole("slider")).toBeInTheDocument();
  return control;
}

afterEach(() => document.body.replaceChildren());

const temperature = {
  label: "Temperature",
  kind: "temperature",
  reads: "temperature",
  min: 233.15,
  max: 333.15,
} as const;

test.each([
  ["metric", "15", 288.15],
  ["us", "14", 263.15],
] as const)(
  "<range-control> in %s units says %s as the very SI value a file would hold",
  async (units, typed, value) => {
    const control = await shown({ ...temperature, units, value: 280 });
    const said = new Promise((resolve) => control.addEventListener("value-changed", (event) => resolve(event.value)));
    await page.getByRole("slider").fill(typed);
    expect(await said).toBe(value);
  },
);

test("<range-control> shows a value between its steps exactly in the box", async () => {
  const control = await shown({ ...temperature, units: "metric", value: 263.37 });
  const box = control.shadowRoot?.querySelector("quantity-field")?.shadowRoot?.querySelector("input");
  await expect.poll(() => box?.value).toBe("-9.78 °C");
});

test("<range-control> goes back to its value where a change was refused", async () => {
  const control = await shown({ ...temperature, units: "metric", value: 288.15 });
  const slider = page.getByRole("slider");
  await slider.fill("40"); // nobody takes the value
  await control.updateComplete;
  await expect.element(slider).toHaveValue("15");
});
