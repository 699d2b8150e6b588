import { html } from "lit";
import "../elements/bench-sheet.js";
import { lessonsView } from "../lessons/lessonsView.js";
import { chooseView } from "./chooseView.js";
import { fieldView } from "./fieldView.js";
import { formulasView } from "./formulasView.js";
import type { View } from "./View.js";

/** The bench sheet itself, which is there at once. */
export const sheetView: View = {
  id: "sheet",
  label: "The sheet",
  load: async () => undefined,
  show: ({ sheet, units, examples, marked }) =>
    html`<bench-sheet .sheet=${sheet} .units=${units} .examples=${examples} .marked=${marked}></bench-sheet>`,
};

/** Every view, in the order of the row that leads to them; all but the first are fetched when first opened. */
export const views: readonly View[] = [sheetView, chooseView, fieldView, lessonsView, formulasView];

/** The view an address leads to, and where in it; the sheet for any other address. */
export function viewAt(fragment: string): { readonly view: View; readonly place: string } {
  const [id, ...rest] = fragment.replace(/^#/, "").split("/");
  const view = views.find((one) => one.id === id) ?? sheetView;
  return { view, place: view.id === id ? decodeURIComponent(rest.join("/")) : "" };
}
