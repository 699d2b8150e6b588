const marks: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** A text as HTML shows it, whatever is in it. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (mark) => marks[mark] ?? mark);
}
