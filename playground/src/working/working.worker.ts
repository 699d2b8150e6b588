import { proofOf } from "@thirstline/study/working";
import type { Found, Sought } from "./messages.js";
import type { Source } from "./Question.js";
import { sourceWorking } from "./sourceWorking.js";

let source: Source | null = null;
let latest = 0;

addEventListener("message", async ({ data }: MessageEvent<Sought>) => {
  latest = data.id;
  source = data.source ?? source;
  const { id } = data;
  const tell = (found: Found) => postMessage(found);
  try {
    const working = source && (await sourceWorking(source, data.leaf));
    tell({ id, kind: "working", working });
    if (working === null) return;
    // Only where nothing newer is asked for by then: messages are heard between turns.
    setTimeout(() => {
      if (id === latest) tell({ id, kind: "proof", proof: proofOf(working) });
    });
  } catch (error) {
    tell({ id, kind: "refused", why: error instanceof Error ? error.message : "it has no answer" });
  }
});
