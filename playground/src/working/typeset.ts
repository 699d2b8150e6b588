import fontFile from "@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2?url";
import { css } from "lit";
import temml from "temml";

const FACE = "Thirstline Maths";
// Named here and not by the package's stylesheet, which offers the font for Latin letters only.
const font = new FontFace(FACE, `url(${fontFile}) format("woff2")`, { display: "swap" });
document.fonts.add(font);
font.load().catch(() => undefined); // without it a system's own font stands in

const known = new Map<string, Element>();

/** What a typeset formula may say of itself: no style and no class, which stay with the page. */
const ALLOWED = new Set([
  "display",
  "accent",
  "fence",
  "form",
  "linethickness",
  "lspace",
  "mathvariant",
  "maxsize",
  "minsize",
  "movablelimits",
  "rspace",
  "scriptlevel",
  "displaystyle",
  "separator",
  "stretchy",
  "symmetric",
  "width",
]);

/** Typesets TeX's mathematical notation as MathML, on a line of its own or within one. */
export function typeset(tex: string, display = false): Element {
  const key = `${display} ${tex}`;
  const found = known.get(key) ?? made(tex, display);
  if (known.size >= 2000) known.clear();
  known.set(key, found);
  return found.cloneNode(true) as Element;
}

function made(tex: string, display: boolean): Element {
  const place = document.createElement("span");
  temml.render(tex, place, { displayMode: display });
  const math = place.querySelector("math");
  if (math === null) throw new Error(`this cannot be typeset: ${tex}`);
  for (const one of [math, ...math.querySelectorAll("*")]) {
    for (const { name } of [...one.attributes]) if (!ALLOWED.has(name)) one.removeAttribute(name);
  }
  return math;
}

/** How typeset formulas look. */
export const mathsStyles = css`
  math { font-family: "Thirstline Maths", "STIX Two Math", "Cambria Math", math; font-size: 1.12em; line-height: normal; }
  math[display="block"] { display: block math; width: fit-content; margin: 0; }
  .maths { overflow-x: auto; overflow-y: hidden; padding: 6px 2px; scrollbar-width: thin; max-width: 100%; box-sizing: border-box; }
  .maths:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; }
`;
