import { card } from "@thirstline/study";
import type { Numbered } from "../aside/asideMessages.js";
import type { Asked, Told } from "./messages.js";

addEventListener("message", ({ data: { id, message } }: MessageEvent<Numbered<Asked>>) => {
  work(message)
    .catch((error: unknown): Told => {
      // What core refuses is input that no answer exists for.
      if (error instanceof Error && error.name === "InputError") return { kind: "refused", why: error.message };
      throw error;
    })
    .then((told) => postMessage({ id, message: told } satisfies Numbered<Told>));
});

/** What one kind of question takes is fetched when it is first asked. */
async function work(asked: Asked): Promise<Told> {
  switch (asked.kind) {
    case "gauge":
      return (await import("./gauge/workGauge.js")).workGauge(asked.system, asked.readings);
    case "fleet":
      return (await import("./fleet/workFleet.js")).workFleet(asked);
    case "entry":
      return (await import("./fleet/workEntry.js")).workEntry(asked);
    case "card":
      return { kind: "card", answer: card(asked.system, asked.options) };
  }
}
