/** Where a key leads from a place of a row, 0 to `last`; null for a key that leads nowhere. */
export function stepByKey(key: string, at: number, last: number): number | null {
  const tenth = Math.max(1, Math.round(last / 10));
  const places: Readonly<Record<string, number>> = {
    ArrowRight: at + 1,
    ArrowUp: at + 1,
    ArrowLeft: at - 1,
    ArrowDown: at - 1,
    PageUp: at + tenth,
    PageDown: at - tenth,
    Home: 0,
    End: last,
  };
  const place = places[key];
  return place === undefined ? null : Math.min(last, Math.max(0, place));
}
