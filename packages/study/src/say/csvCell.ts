/** A text as a cell of comma-separated values: in quotes when it holds what would end one. */
export function csvCell(text: string): string {
  return /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
