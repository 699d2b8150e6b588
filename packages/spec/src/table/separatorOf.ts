/** What stands between a table's cells, comma, semicolon or tab: whichever the head has most of; a comma where it has none. */
export function separatorOf(text: string): string {
  const [head = ""] = text.replace(/^(\s*#[^\n]*\n|\s*\n)+/, "").split("\n", 1);
  const count = (separator: string) => head.split(separator).length - 1;
  return [",", ";", "\t"].reduce((most, one) => (count(one) > count(most) ? one : most));
}
