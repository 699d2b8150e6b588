/** Why nothing was kept. */
export type StoreTrouble = "refused" | "full" | "changed elsewhere";

/** Thrown inside a transaction when another page changed the same things since they were read. */
export class ChangedElsewhere extends Error {}

/** What an error of the browser's storage comes to. */
export function troubleOf(error: unknown): StoreTrouble {
  if (error instanceof ChangedElsewhere) return "changed elsewhere";
  return error instanceof Error && error.name === "QuotaExceededError" ? "full" : "refused";
}

/** The same in words; `what` is what is not kept: "these readings". */
export function troubleWords(trouble: StoreTrouble, what: string): string {
  switch (trouble) {
    case "refused":
      return `This browser keeps nothing on the device, as in a private window: ${what} are gone when the page is closed. Save them as a file before that.`;
    case "full":
      return `There is no room left on this device: ${what} are not kept as they stand now. Save them as a file before the page is closed.`;
    case "changed elsewhere":
      return `Another window of this page changed ${what} in the meantime, so nothing was written.`;
  }
}
