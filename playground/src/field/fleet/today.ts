/** The day it is where the device is, as "2026-11-25". */
export function today(): string {
  const now = new Date();
  const two = (figure: number) => String(figure).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
