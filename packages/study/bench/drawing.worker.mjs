// Draws the slices it is told to, as the command line's threads do.
import { parentPort, workerData } from "node:worker_threads";
import { lifeDraws } from "@thirstline/study";

parentPort?.on("message", (slice) => parentPort?.postMessage(lifeDraws(workerData, slice)));
