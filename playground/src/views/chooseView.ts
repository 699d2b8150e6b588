import { keptView } from "./keptView.js";
import type { View } from "./View.js";

/** Choosing an element: fetched when first opened. */
export const chooseView: View = {
  id: "choose",
  label: "Choose an element",
  load: () => import("../choose/choose-view.js"),
  show: (shown) => keptView("choose-view", shown),
};
