import type { Fault } from "@thirstline/spec";

/** What core refuses is input that no answer exists for; anything else is a mistake of ours and must be seen. */
export function refusal(file: string, error: unknown): Fault {
  if (!(error instanceof Error) || error.name !== "InputError") throw error;
  return { file, line: 1, column: 1, path: "", code: "no answer", received: null, message: error.message };
}
