import { html } from "lit";
import type { View } from "./View.js";

/** Every formula with its range, accuracy, source and checks; fetched when first opened. */
export const formulasView: View = {
  id: "formulas",
  label: "The formulas",
  apart: true,
  load: () => import("../working/formulas-view.js"),
  show: ({ place }) => html`<formulas-view .place=${place}></formulas-view>`,
};
