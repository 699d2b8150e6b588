import { keptView } from "./keptView.js";
import type { View } from "./View.js";

/** At the machine: a gauge followed, a yard's list and the job card; fetched when first opened. */
export const fieldView: View = {
  id: "field",
  label: "At the machine",
  apart: true,
  load: () => import("../field/field-view.js"),
  show: (shown) => keptView("field-view", shown),
};
