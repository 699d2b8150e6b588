import { html } from "lit";
import type { View } from "../views/View.js";

/** The lessons: their contents, and each under its own name in the address. */
export const lessonsView: View = {
  id: "lessons",
  label: "Lessons",
  apart: true,
  load: () => import("./elements/lessons-view.js"),
  show: ({ units, place }) => html`<lessons-view .units=${units} .place=${place}></lessons-view>`,
};
