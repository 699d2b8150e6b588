/** A round step that divides a length into some six parts: 1, 2 or 5 and zeros. */
function stepOf(length: number): number {
  const rough = length / 6;
  const power = 10 ** Math.floor(Math.log10(rough));
  const factor = [1, 2, 5, 10].find((one) => one * power >= rough * 0.999) ?? 10;
  return factor * power;
}

/** Round values from one end to the other, both taken outward to a whole step when `outward`, else kept inside. */
export function ticksOf(from: number, to: number, outward: boolean): number[] {
  const step = stepOf(to - from);
  const [first, last] = outward
    ? [Math.floor(from / step + 1e-9), Math.ceil(to / step - 1e-9)]
    : [Math.ceil(from / step - 1e-9), Math.floor(to / step + 1e-9)];
  return Array.from({ length: last - first + 1 }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}
