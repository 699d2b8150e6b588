import type { Locator, Page } from "playwright";

/** What the panel says once a figure's working is open. */
export interface OpenedFigure {
  /** as it reads where it stands */
  readonly text: string;
  /** the figure's name and value, as the panel has them */
  readonly heading: string;
  /** what it is of; "" for the system on the sheet */
  readonly about: string;
}

/** Opens the working of a figure by clicking it. */
export async function openFigure(page: Page, figure: Locator): Promise<OpenedFigure> {
  const panel = page.locator("working-panel");
  // Another that is open still shows its own until the new one comes.
  if ((await panel.count()) > 0) await panel.getByRole("button", { name: "Close" }).click();
  const text = flat(await figure.textContent());
  await figure.click();
  await panel.locator("step-working h3").waitFor({ timeout: 60_000 });
  const about = panel.locator(".about");
  return {
    text,
    heading: flat(await panel.locator("step-working h3").textContent()),
    about: (await about.count()) > 0 ? flat(await about.textContent()) : "",
  };
}

function flat(text: string | null): string {
  return (text ?? "").replace(/\s+/g, " ").trim();
}
