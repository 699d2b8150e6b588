/** Attributes of a drawing's element; one that is undefined is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element of a drawing as text. What is inside is markup already; see `plainText`. */
export function tag(name: string, attributes: Attributes, inside = ""): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${plainText(typeof value === "number" ? shortNumber(value) : (value ?? ""))}"`)
    .join("");
  return inside === "" ? `<${name}${written}/>` : `<${name}${written}>${inside}</${name}>`;
}

/** Text as markup holds it. */
export function plainText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

/** A whole drawing as the text of a file. */
export function drawingText(size: { width: number; height: number }, paper: string, inside: string): string {
  const { width, height } = size;
  const root = { xmlns: "http://www.w3.org/2000/svg", width, height, viewBox: `0 0 ${width} ${height}` };
  return tag("svg", root, tag("rect", { width, height, fill: paper }) + inside);
}

/** To the tenth of a pixel, which no eye tells from more. */
function shortNumber(value: number): string {
  return String(Math.round(value * 10) / 10);
}
