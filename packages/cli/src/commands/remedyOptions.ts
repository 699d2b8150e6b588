import type { RemedyOptions } from "@thirstline/study";
import type { Choosing } from "./choosing.js";

/** What `remedy` goes by besides a file, from what was asked. */
export function remedyOptions({ query, choice }: Pick<Choosing, "query" | "choice">): RemedyOptions {
  return {
    costs: choice.costs,
    ...(query.temperatures.length === 0 ? {} : { temperatures: query.temperatures }),
  };
}
