import type { System } from "@thirstline/spec/system";
import { proofOf, workingOf } from "@thirstline/study/working";
import type { Found, Sought } from "./messages.js";

let system: System | null = null;
let latest = 0;

addEventListener("message", ({ data }: MessageEvent<Sought>) => {
  latest = data.id;
  system = data.system ?? system;
  const { id } = data;
  const tell = (found: Found) => postMessage(found);
  try {
    const working = system && workingOf(system, data.leaf.figure, data.leaf.asked);
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
