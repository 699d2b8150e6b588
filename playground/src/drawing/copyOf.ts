import { plainText, tag } from "./tag.js";

/** Text laid over a drawing that is not part of it on the screen, with the box it stands in. */
export interface Overlaid {
  readonly text: string;
  readonly element: Element;
}

/** What is drawn by styles on the page and by attributes in a file. */
const looks = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linejoin",
  "stroke-linecap",
  "opacity",
  "paint-order",
  "font-size",
  "font-weight",
  "text-anchor",
] as const;
/** As a browser has them where nothing says otherwise: not written. */
const plainLooks = new Set(["1", "none 0s", "normal", "start", "miter", "butt", "400", "0px"]);

/** A drawing on the page as markup that stands alone: what its styles say is written into its elements. */
export function copyOf(element: SVGElement): string {
  const styles = getComputedStyle(element);
  if (styles.display === "none") return "";
  const own = Object.fromEntries(
    [...element.attributes]
      .filter(({ name }) => !["class", "role", "style", "data-key"].includes(name) && !name.startsWith("aria-"))
      .map(({ name, value }) => [name, value]),
  );
  const inside = [...element.childNodes]
    .map((node) => {
      if (node instanceof SVGElement) return copyOf(node);
      // Between shapes there is only the markup's own white space.
      const words = node.nodeType === Node.TEXT_NODE && element.tagName === "text" ? (node.textContent ?? "") : "";
      return plainText(words.replace(/\s+/g, " "));
    })
    .join("");
  const name = element.tagName;
  if (["g", "defs", "clipPath", "pattern"].includes(name)) return inside === "" ? "" : tag(name, own, inside);
  const drawn = Object.fromEntries(
    looks.flatMap((look) => {
      const value = styles.getPropertyValue(look);
      const text = look.startsWith("font") || look === "text-anchor";
      if (value === "" || plainLooks.has(value) || (text && name !== "text")) return [];
      return [[look, value.replace(/url\("?#?([^")]*#)?([^")]*)"?\)/, "url(#$2)")]];
    }),
  );
  return tag(name, { ...own, ...drawn }, inside);
}

/** Texts laid over a drawing, as its own, at the places they have on the page. */
export function overlaidText(overlaid: readonly Overlaid[], drawing: Element): string {
  const from = drawing.getBoundingClientRect();
  return overlaid
    .map(({ text, element }) => {
      const box = element.getBoundingClientRect();
      const { fontSize, fontWeight, color } = getComputedStyle(element);
      return tag(
        "text",
        {
          x: box.left - from.left + box.width / 2,
          y: box.top - from.top + box.height / 2 + Number.parseFloat(fontSize) / 3,
          "text-anchor": "middle",
          "font-size": fontSize,
          "font-weight": fontWeight,
          fill: color,
        },
        plainText(text),
      );
    })
    .join("");
}
