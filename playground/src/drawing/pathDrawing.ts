import { inksOf } from "../chart/inksOf.js";
import { copyOf, overlaidText } from "./copyOf.js";
import { drawingText, tag } from "./tag.js";

/** Room for names that stand out at the sides, px. */
const MARGIN = 12;

/** The path with its names and the descent under it as a drawing of its own; null before it has been drawn. */
export function pathDrawing(path: HTMLElement): string | null {
  const root = path.shadowRoot;
  const svg = root?.querySelector("svg");
  if (!root || !svg) return null;
  const inks = inksOf(path);
  const drawn = [...svg.children].map((one) => copyOf(one as SVGElement)).join("");
  const names = [...root.querySelectorAll(".name > span, .name > i, span.name")].map((element) => ({
    text: (element.matches("span.name") ? element.firstChild : element)?.textContent?.replace(/\s+/g, " ").trim() ?? "",
    element,
  }));
  const size = { width: svg.clientWidth + 2 * MARGIN, height: svg.clientHeight + 2 * MARGIN };
  const inside = tag("g", { transform: `translate(${MARGIN} ${MARGIN})` }, drawn + overlaidText(names, svg));
  return drawingText(size, inks.paper, tag("g", { "font-family": inks.face }, inside));
}
