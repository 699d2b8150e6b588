import { remedy } from "@thirstline/study";
import type { Numbered, Progress } from "../aside/asideMessages.js";
import type { Asked, Told } from "./messages.js";
import { workSize } from "./workSize.js";
import { workSwap } from "./workSwap.js";

addEventListener("message", ({ data: { id, message } }: MessageEvent<Numbered<Asked>>) => {
  const tell = (told: Told | Progress) => postMessage({ id, message: told } satisfies Numbered<Told | Progress>);
  work(message, tell).catch((error: unknown) => {
    // What core refuses is input that no answer exists for.
    if (error instanceof Error && error.name === "InputError")
      tell({ kind: "refused", why: error.message, done: true });
    else throw error;
  });
});

async function work(asked: Asked, tell: (told: Told | Progress) => void): Promise<void> {
  switch (asked.kind) {
    case "read": {
      const { readCatalogue } = await import("@thirstline/spec");
      return tell({ kind: "read", result: readCatalogue(asked.bytes, { file: asked.file }), done: true });
    }
    case "swap":
      return workSwap(asked, tell);
    case "size":
      return workSize(asked, tell);
    case "remedy":
      return tell({ kind: "remedy", answer: remedy(asked.system, asked.options), done: true });
  }
}
