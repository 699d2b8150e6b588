import { html } from "lit";
import type { View } from "./View.js";

/** Choosing an element: fetched when first opened. */
export const chooseView: View = {
  id: "choose",
  label: "Choose an element",
  load: () => import("../choose/choose-view.js"),
  show: ({ sheet, units, place }) => html`<choose-view .sheet=${sheet} .units=${units} .place=${place}></choose-view>`,
};
