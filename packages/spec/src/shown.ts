/** Anything from a file as a fault quotes it: in quotes, cut when long, control characters made visible. */
export function shown(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object" && value !== null) return "a block of keys";
  if (value === null || value === undefined) return "nothing";
  const text = String(value);
  const short = text.length > 40 ? `${text.slice(0, 37)}...` : text;
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  const visible = short.replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]/g, (c) => {
    return `\\u${c.charCodeAt(0).toString(16).padStart(4, "0")}`;
  });
  return visible.includes('"') ? `'${visible}'` : `"${visible}"`;
}
