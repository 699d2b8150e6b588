import type { MapReply, MapRequest } from "./coldMapMessages.js";
import { mapPoints } from "./mapPoints.js";

addEventListener("message", ({ data }: MessageEvent<MapRequest>) => {
  const reply: MapReply = { id: data.id, points: mapPoints(data.system, data.temperatures) };
  postMessage(reply);
});
