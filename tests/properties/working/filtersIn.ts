/** Places of a system that have filters, in the order the fuel meets them. */
export function filtersIn(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  const part = value as { readonly part?: string; readonly name?: string };
  if (part.part === "filter") return [String(part.name)];
  return Object.values(value).flatMap(filtersIn);
}
