/**
 * A column's head taken apart: its name, and after it, in brackets, the unit of cells that are numbers alone.
 *
 * @example
 * splitHead("Gauge (kPa)") // { name: "gauge", written: "Gauge", unit: "kPa" }
 */
export function splitHead(text: string): { readonly name: string; readonly written: string; readonly unit: string } {
  const [, head = "", unit = ""] = /^(.*?)\s*(?:[([]([^()[\]]*)[)\]])?$/s.exec(text.trim()) ?? [];
  const written = head.trim();
  return { name: written.toLowerCase().replace(/\s+/g, " "), written, unit };
}
