import type { SystemFilter } from "@thirstline/spec/system";
import type { SheetFilter } from "./Tried.js";

/** The size a filter is known by, m: of its rating, else the largest of its betas; null where no size is stated. */
export function ratedSize({ medium, statedRating, betas }: SystemFilter): number | null {
  if (medium.by === "rating") return medium.size;
  return statedRating?.size ?? betas?.at(-1)?.size ?? null;
}

/** Ends of the sizes a filter can be tried at, m, such that a file still holds all of its sizes. */
export function sizeRange(filter: SystemFilter): { readonly least: number; readonly most: number } {
  const size = ratedSize(filter) ?? 0;
  const betas = filter.betas?.map((one) => one.size) ?? [];
  // A file takes betas from 1 to 100 um.
  const least = Math.max(2e-6, ...betas.map((one) => (1e-6 / one) * size));
  const most = Math.min(100e-6, ...betas.map((one) => (100e-6 / one) * size));
  return { least, most };
}

/** Ends of a slider around the size a filter was stated at, m: from a fifth of it to four times. */
export function sliderRange(filter: SheetFilter): { readonly least: number; readonly most: number } {
  const { least, most } = sizeRange(filter);
  const own = filter.tried?.size ?? ratedSize(filter) ?? 0;
  return { least: Math.max(least, own / 5), most: Math.min(most, 4 * own) };
}
